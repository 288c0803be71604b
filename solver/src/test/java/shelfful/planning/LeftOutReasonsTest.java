package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.load.Load;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Stage;
import shelfful.ware.Zone;

/** One list for every reason to wait, with the figures that its sentence must give. */
class LeftOutReasonsTest {
  private static final long STEPS = 4;

  private static Scene cups() {
    return new Scene().cup("a", 90, 60).glaze("plain", Set.of(), Set.of());
  }

  /** The sentence of a piece that waits for this reason; fails when it waits for another. */
  private static String sentence(Scene scene, String pieceId, Reason reason) {
    Load load = scene.plan(STEPS);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    LeftOut out =
        load.leftOut().stream().filter(o -> o.pieceId().equals(pieceId)).findFirst().orElseThrow();
    assertThat(out.reason()).as(out.sentence()).isEqualTo(reason);
    return out.sentence();
  }

  private static Glaze glaze(String id, Cone cone, Optional<Atmosphere> atmosphere) {
    return new Glaze(
        id,
        id,
        id,
        "#808080",
        cone,
        atmosphere,
        Optional.empty(),
        false,
        Length.ZERO,
        Set.of(),
        Set.of());
  }

  private static Batch at(Batch batch, Stage stage, Optional<String> set) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        stage,
        batch.cone(),
        batch.mustGo(),
        batch.priority(),
        batch.due(),
        batch.order(),
        set,
        batch.lidPlace());
  }

  @Test
  void notReady() {
    Scene scene = cups().batch("A", "a", 1);
    scene.but(batch -> at(batch, Stage.LEATHER_HARD, Optional.empty()));
    assertThat(sentence(scene, "A-001", Reason.NOT_READY)).contains("leather-hard", "glazed");
  }

  @Test
  void glazedWareIsNotReadyForABisqueFiring() {
    Firing bisque = new Firing("K", FiringKind.BISQUE, new Cone("04"), 0, Atmosphere.OXIDATION);
    Scene scene = cups().firing(bisque).batch("A", "a", "plain", 1);
    scene.but(batch -> at(batch, Stage.BONE_DRY, Optional.empty()));
    assertThat(sentence(scene, "A-001", Reason.NOT_READY)).contains("plain", "bisque");
  }

  @Test
  void otherCone() {
    Scene scene =
        cups().glaze(glaze("low", new Cone("06"), Optional.empty())).batch("A", "a", "low", 1);
    assertThat(sentence(scene, "A-001", Reason.OTHER_CONE)).contains("cone 06", "cone 6", "0");
  }

  @Test
  void otherAtmosphere() {
    Scene scene =
        cups()
            .glaze(glaze("smoke", Scene.SIX, Optional.of(Atmosphere.REDUCTION)))
            .batch("A", "a", "smoke", 1);
    assertThat(sentence(scene, "A-001", Reason.OTHER_ATMOSPHERE))
        .contains("smoke", "reduction", "oxidation");
  }

  /** On posts of 20 mm and a shelf of 10 mm, 10 mm under a lid at 400 mm: 360 mm. */
  @Test
  void tooTall() {
    assertThat(cups().cup("high", 60, 360).batch("A", "high", 1).plan(0).placed()).isEqualTo(1);
    Scene scene = cups().cup("higher", 60, 360.1).batch("A", "higher", 1);
    assertThat(sentence(scene, "A-001", Reason.TOO_TALL)).contains("360.1 mm", "360 mm");
  }

  @Test
  void noPosts() {
    Scene none = cups().noPosts().batch("A", "a", 1);
    assertThat(sentence(none, "A-001", Reason.TOO_TALL)).contains("not enough posts");
    Scene tooFew = cups().noPosts().post("short", 20, 2).batch("A", "a", 1);
    assertThat(sentence(tooFew, "A-001", Reason.TOO_TALL)).contains("not enough posts");
  }

  /** The foot stays 5 mm in from the edge of a shelf of 450 mm: 440 mm less the margin. */
  @Test
  void tooWide() {
    assertThat(cups().cup("wide", 439.9, 60).batch("A", "wide", 1).plan(0).placed()).isEqualTo(1);
    Scene scene = cups().cup("wider", 440.1, 60).batch("A", "wider", 1);
    assertThat(sentence(scene, "A-001", Reason.TOO_WIDE)).contains("440.1 mm");
  }

  @Test
  void tooHeavy() {
    assertThat(cups().shelvesCarry(1).batch("A", "a", 1).plan(0).placed()).isEqualTo(1);
    Scene scene = cups().shelvesCarry(0.9).batch("A", "a", 1);
    assertThat(sentence(scene, "A-001", Reason.TOO_HEAVY)).contains("1.0 kg", "0.9 kg");
  }

  @Test
  void noShelfForCone() {
    Scene scene = cups().shelvesUpTo("5").batch("A", "a", 1);
    assertThat(sentence(scene, "A-001", Reason.NO_SHELF_FOR_CONE)).contains("cone 6");
  }

  /** A piece of 350 mm in a chamber of 400 mm always has its middle in the middle third. */
  @Test
  void noZone() {
    Scene scene =
        cups()
            .cup("high", 60, 350)
            .glaze("shy", Set.of(), Set.of(Zone.MIDDLE))
            .batch("A", "high", "shy", 1);
    assertThat(sentence(scene, "A-001", Reason.NO_ZONE)).contains("shy", "350 mm");
  }

  @Test
  void keptApart() {
    Scene scene =
        cups()
            .glaze("chrome", Set.of(), Set.of())
            .glaze("tin", Set.of(), Set.of())
            .apart(new KeptApart("chrome", "tin", Apartness.NOT_IN_ONE_FIRING, Optional.empty()))
            .batch("C", "a", "chrome", 5)
            .batch("T", "a", "tin", 1);
    assertThat(sentence(scene, "T-001", Reason.KEPT_APART)).contains("tin", "chrome", "5");
  }

  @Test
  void setWaits() {
    Scene scene = cups().batch("A", "a", 1);
    scene.but(batch -> at(batch, Stage.GLAZED, Optional.of("tea")));
    scene.batch("B", "a", 1);
    scene.but(batch -> at(batch, Stage.WET, Optional.of("tea")));
    assertThat(sentence(scene, "A-001", Reason.SET_WAITS)).contains("batch B");
  }

  /**
   * Two pieces of 300 mm width do not go on one shelf of 450, and one layer is all that is high.
   */
  @Test
  void noRoom() {
    Scene scene = cups().cup("drum", 300, 300).batch("A", "drum", 2);
    assertThat(sentence(scene, "A-002", Reason.NO_ROOM)).contains("the only layer", "300 mm");
  }

  @Test
  void everyReasonIsTriedHere() {
    Set<String> tried = new java.util.TreeSet<>();
    for (var method : LeftOutReasonsTest.class.getDeclaredMethods()) {
      tried.add(method.getName().toUpperCase(java.util.Locale.ROOT));
    }
    assertThat(tried)
        .containsAll(
            EnumSet.complementOf(EnumSet.of(Reason.TAKEN_OUT)).stream()
                .map(r -> r.name().replace("_", ""))
                .toList());
    // One more than here: a piece is taken out by hand, never by planning.
    assertThat(List.of(Reason.values())).hasSize(12);
  }
}
