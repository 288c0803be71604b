package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Disc;
import shelfful.geometry.Pose;
import shelfful.geometry.Region;

class FixedBodiesTest {

  /** Some bodies of a setting are fixed, the others asked about again: they fit, for they did. */
  @Test
  void settingsKeepClearOfWhatStandsThere() {
    RandomQuestions questions = new RandomQuestions(47);
    int answered = 0;
    for (int i = 0; i < 60; i++) {
      ShelfQuestion whole = questions.next();
      if (new ShelfPacker().pack(whole, Effort.QUICK, i) instanceof Packed packed
          && whole.bodies() > 2) {
        ShelfQuestion rest = everySecondFixed(whole, packed);
        assertThat(PackingBound.refusal(rest)).isEmpty();
        if (new ShelfPacker().pack(rest, Effort.QUICK, i) instanceof Packed found) {
          answered++;
          accepts(rest, found);
          Packed even = new EvenSpacer().spread(rest, found, Effort.HASTY, i);
          assertThat(even.spare()).isGreaterThanOrEqualTo(found.spare());
          accepts(rest, even);
        }
      }
    }
    assertThat(answered).isGreaterThan(15);
  }

  private static ShelfQuestion everySecondFixed(ShelfQuestion whole, Packed packed) {
    int[] counts = whole.counts();
    List<Placed> fixed = new ArrayList<>();
    for (int b = 0; b < packed.bodies().size(); b += 2) {
      fixed.add(packed.bodies().get(b));
      counts[packed.bodies().get(b).kind()]--;
    }
    return new ShelfQuestion(whole.space(), whole.kinds(), counts, whole.clearance(), fixed);
  }

  private static void accepts(ShelfQuestion question, Packed packed) {
    List<Placed> all = new ArrayList<>(packed.bodies());
    all.addAll(question.fixed());
    double slack = 2e-4 * question.space().rooms().get(0).region().boundingRadius();
    assertThat(Judge.spare(question, all)).isGreaterThan(-slack);
  }

  /** Seven discs of a third of the room's radius leave one place open: the seventh's own. */
  @Test
  void findsTheOnlyPlaceLeft() {
    double radius = 30;
    ShelfSpace space = ShelfSpace.of(new Room(Region.disc(3.001 * radius), 0, Applies.BODY));
    List<Placed> six = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double bearing = Math.PI / 3 * i;
      six.add(
          new Placed(0, Pose.at(2 * radius * Math.cos(bearing), 2 * radius * Math.sin(bearing))));
    }
    List<BodyKind> kinds = List.of(BodyKind.round("pot", radius - 0.001, 10));
    double[][] none = {{0}};
    ShelfQuestion one = new ShelfQuestion(space, kinds, new int[] {1}, none, six);
    Packed packed = (Packed) new ShelfPacker().pack(one, Effort.NORMAL, 1);
    Pose middle = packed.bodies().get(0).pose();
    assertThat(Math.hypot(middle.x(), middle.y())).isLessThan(0.1);
    ShelfQuestion two = new ShelfQuestion(space, kinds, new int[] {2}, none, six);
    assertThat(new ShelfPacker().pack(two, Effort.QUICK, 1)).isInstanceOf(DoesNotFit.class);
    // Six that stand and four more are ten areas of a pot in nine.
    ShelfQuestion four = new ShelfQuestion(space, kinds, new int[] {4}, none, six);
    assertThat(PackingBound.refusal(four)).contains(Cause.AREA);
  }

  @Test
  void lookOnlyAtHeightsThatBothHave() {
    BodyKind low = BodyKind.round("low", 60, 20);
    BodyKind brim =
        new BodyKind(
            "brim",
            List.of(new Part(new Disc(0, 0, 10), 0, 30), new Part(new Disc(0, 0, 60), 30, 40)),
            new Disc(0, 0, 10),
            false,
            0);
    ShelfSpace space = ShelfSpace.of(new Room(Region.disc(100), 0, Applies.BODY));
    Placed fixed = new Placed(0, Pose.at(-40, 0));
    double[][] gap = {{3, 3}, {3, 3}};
    ShelfQuestion question =
        new ShelfQuestion(space, List.of(low, brim), new int[] {0, 1}, gap, List.of(fixed));
    Packed packed = (Packed) new ShelfPacker().pack(question, Effort.QUICK, 1);
    Pose pose = packed.bodies().get(0).pose();
    // Foot against pot: 60 + 10 + 3. The brim passes over the pot.
    assertThat(Math.hypot(pose.x() + 40, pose.y())).isGreaterThanOrEqualTo(73 - 1e-6);
    assertThat(Math.hypot(pose.x(), pose.y())).isLessThanOrEqualTo(40 + 1e-6);
  }
}
