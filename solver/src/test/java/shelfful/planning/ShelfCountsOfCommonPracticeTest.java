package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Forms;
import shelfful.kiln.ShelfOutline;
import shelfful.load.Load;
import shelfful.studio.Clearances;
import shelfful.ware.Form;
import shelfful.ware.Lug;
import shelfful.ware.Profile;

/**
 * How many pieces one shelf takes in set-ups of common practice (no source for the set-ups). The
 * brackets are derived: no more than Groemer's bound for equal discs in a convex region (N ≤ (2/√3)
 * A/d² + P/(2d) + 1; Groemer 1960, Oler 1961), and no fewer than a plain square grid laid on the
 * shelf by ruler, which any potter can set.
 */
class ShelfCountsOfCommonPracticeTest {
  private static final long STEPS = 40;

  private static Clearances practice() {
    return Clearances.COMMON_PRACTICE;
  }

  /** The usual 200 litre kiln: a shelf of 533 mm (21 in) in a chamber of 584 mm (23 in). */
  private static Scene drum(double height) {
    return new Scene()
        .chamber(584, height)
        .shelf(new ShelfOutline.FullRound(Scene.mm(533)))
        .clearances(practice())
        .noPosts()
        .post("1 in", 25.4, 3);
  }

  private static int groemer(double area, double perimeter, double pitch) {
    return (int) (2 / Math.sqrt(3) * area / (pitch * pitch) + perimeter / (2 * pitch) + 1);
  }

  private static int groemer(double radius, double pitch) {
    return groemer(Math.PI * radius * radius, 2 * Math.PI * radius, pitch);
  }

  /** Middles on a square grid about the shelf's middle, or about the middle of a square of it. */
  private static int grid(double radius, double pitch) {
    int best = 0;
    for (double shift : List.of(0.0, 0.5)) {
      int count = 0;
      for (int row = -20; row <= 20; row++) {
        for (int column = -20; column <= 20; column++) {
          count += Math.hypot((row + shift) * pitch, (column + shift) * pitch) <= radius ? 1 : 0;
        }
      }
      best = Math.max(best, count);
    }
    return best;
  }

  private static int placed(Scene scene) {
    Load load = scene.plan(STEPS);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(load.layers()).hasSize(1);
    return load.placed();
  }

  /** Feet of 60 mm; bodies of 85 mm may pass the edge, the wall is 25 mm from them. */
  @Test
  void tumblersOf85OnAShelfOf533() {
    Profile profile = Profile.upright(Forms.round(60), Forms.round(85), Scene.mm(110), List.of());
    Form tumbler = Forms.form("tumbler", profile, 0.4);
    int count = placed(drum(250).form(tumbler).batch("T", "tumbler", 40));
    // A body 25 + 1 mm off the wall: its middle within 292 - 26 - 42.5 = 223.5; pitch 85 + 6.4 + 2.
    assertThat(count).isBetween(grid(223.5, 93.4), groemer(223.5, 93.4));
  }

  /** Handles that reach 70 mm from the axis cost room, but lie between their neighbours. */
  @Test
  void mugsWithHandlesOnAShelfOf533() {
    Lug handle =
        new Lug(
            "handle",
            shelfful.measure.Angle.ZERO,
            Scene.mm(70),
            Scene.mm(14),
            Scene.mm(20),
            Scene.mm(80));
    Profile profile =
        Profile.upright(Forms.round(60), Forms.round(85), Scene.mm(100), List.of(handle));
    Form mug = Forms.form("mug", profile, 0.4);
    int count = placed(drum(250).form(mug).batch("M", "mug", 40));
    // Handles outwards on a grid by ruler: as if each were a disc of 85 + 27.5 mm across.
    assertThat(count).isBetween(grid(292 - 26 - 56.25, 120.9), groemer(223.5, 93.4));
  }

  /** Dinner plates of 270 mm: one on a shelf of 533 mm beside which no second one goes. */
  @Test
  void dinnerPlatesOnAShelfOf533() {
    Profile profile = Profile.upright(Forms.round(160), Forms.round(270), Scene.mm(25), List.of());
    Form plate = Forms.form("plate", profile, 0.9);
    // Two need 2 × 270 + 8.4 = 548.4 mm of the 584 - 2 × 26 = 532 that are free.
    assertThat(placed(drum(120).form(plate).batch("P", "plate", 4))).isEqualTo(1);
    Profile less = Profile.upright(Forms.round(150), Forms.round(260), Scene.mm(25), List.of());
    Form dish = Forms.form("dish", less, 0.9);
    // Two of 260 need 528.4 mm.
    assertThat(placed(drum(120).form(dish).batch("P", "dish", 4))).isEqualTo(2);
  }

  /**
   * A slab of 508 by 406 mm (20 by 16 in), espresso cups of 60 mm with their whole body over it.
   */
  @Test
  void espressoCupsOnASlab() {
    Scene scene =
        new Scene()
            .chamber(700, 200)
            .shelf(new ShelfOutline.Rectangle(Scene.mm(508), Scene.mm(406)))
            .clearances(practice())
            .noPosts()
            .post("1 in", 25.4, 3)
            .form(
                Forms.form(
                    "cup",
                    Profile.upright(Forms.round(60), Forms.round(60), Scene.mm(60), List.of()),
                    0.1))
            .batch("E", "cup", 60);
    // Feet 5 + 1 mm in from the edge: middles within 436 by 334 mm; pitch 60 + 6.4 + 2 = 68.4.
    int byRuler = (1 + (int) (436 / 68.4)) * (1 + (int) (334 / 68.4));
    assertThat(byRuler).isEqualTo(35);
    assertThat(placed(scene)).isBetween(byRuler, groemer(436 * 334, 2 * (436 + 334), 68.4));
    assertThat(Optional.of(groemer(436 * 334, 2 * (436 + 334), 68.4))).hasValue(48);
  }
}
