package shelfful.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.PlaceFigure;
import shelfful.inspect.Rule;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

class SnapTest {
  private static final Length REACH = Length.ofMillimetres(6);

  /** Two beakers far apart on an open shelf; the third waits. */
  private static Load beakers() {
    return new LoadDraft(
            Studios.studio(),
            Firings.glaze("round"),
            "full",
            Batches.glazed("BK", "beaker", "chalk", 3))
        .level("F", "1in")
        .level("F", "4in")
        .place("F1", "BK-001", -60, 0, 0)
        .place("F1", "BK-002", 40, 0, 0)
        .load();
  }

  private static Tentative drawn(String pieceId, double x, double y) {
    return Hand.of(WorkPlan.of(beakers()), pieceId)
        .orElseThrow()
        .snapped("F1", Point.ofMillimetres(x, y), Angle.ZERO, REACH);
  }

  private static List<PlaceFigure> contacts(Tentative held) {
    return held.figures().stream()
        .filter(figure -> figure.isInThePlan() && figure.spare().micrometres() <= 5)
        .toList();
  }

  @Test
  void aPieceNearAnotherComesToRestAtExactlyTheGapToKeep() {
    Tentative held = drawn("BK-003", -60, 82);
    assertThat(held.mayStand()).isTrue();
    PlaceFigure gap = contacts(held).get(0);
    assertThat(gap.other()).isEqualTo("BK-001");
    assertThat(gap.spare().micrometres()).isBetween(0L, 4L);
    // Straight up from the other, so its x stays.
    assertThat(held.place().at().x().millimetres()).isCloseTo(-60, within(0.01));
  }

  @Test
  void aPieceTooDeepIsPushedOutWithinReachAndLeftAloneBeyondIt() {
    Tentative shallow = drawn("BK-003", -60, 75);
    assertThat(shallow.mayStand()).isTrue();
    assertThat(shallow.place().at().y().millimetres()).isGreaterThan(75);
    Tentative deep = drawn("BK-003", -60, 40);
    assertThat(deep.mayStand()).isFalse();
    assertThat(deep.place().at()).isEqualTo(Point.ofMillimetres(-60, 40));
  }

  @Test
  void aPieceBetweenTwoComesToRestAgainstBoth() {
    Tentative free = drawn("BK-003", -10, -150);
    assertThat(contacts(free)).isEmpty();
    double reach = twoBeakersApart();
    double y = Math.sqrt(reach * reach - 50 * 50);
    Tentative held = drawn("BK-003", -9, y + 2);
    assertThat(contacts(held)).extracting(PlaceFigure::other).contains("BK-001", "BK-002");
    assertThat(held.place().at().x().millimetres()).isCloseTo(-10, within(0.01));
    assertThat(held.place().at().y().millimetres()).isCloseTo(y, within(0.01));
  }

  /** The distance of two beakers' axes at the exact gap. */
  private static double twoBeakersApart() {
    PlaceFigure gap =
        drawn("BK-003", -60, 82).figures().stream()
            .filter(figure -> figure.other().equals("BK-001"))
            .findFirst()
            .orElseThrow();
    Point at = drawn("BK-003", -60, 82).place().at();
    assertThat(gap.rule()).isEqualTo(Rule.PIECES_TOO_CLOSE);
    return Math.hypot(at.x().millimetres() + 60, at.y().millimetres()) - gap.spare().millimetres();
  }

  @Test
  void whatIsDrawnToRestMayStandAndCameNoFartherThanTheReach() {
    SplittableRandom chance = new SplittableRandom(7);
    int atRest = 0;
    for (int i = 0; i < 500; i++) {
      Load load = WorkPlans.one(WorkPlans.loads(), chance);
      Layer layer =
          WorkPlans.one(
              load.layers().stream().filter(l -> !l.placements().isEmpty()).toList(), chance);
      Placement piece = WorkPlans.one(layer.placements(), chance);
      Placement nudged = WorkPlans.nudged(piece, 12, chance);
      Hand hand = Hand.of(WorkPlan.of(load), piece.pieceId()).orElseThrow();
      Tentative raw = hand.at(layer.id(), nudged.at(), nudged.turn());
      Tentative held = hand.snapped(layer.id(), nudged.at(), nudged.turn(), REACH);
      assertThat(way(raw, held)).isLessThanOrEqualTo(6.0);
      if (!held.place().equals(raw.place())) {
        assertThat(held.mayStand()).isTrue();
        assertThat(contacts(held)).isNotEmpty();
        atRest++;
      }
    }
    assertThat(atRest).isGreaterThan(100);
  }

  private static double way(Tentative from, Tentative to) {
    return Math.hypot(
        to.place().at().x().minus(from.place().at().x()).millimetres(),
        to.place().at().y().minus(from.place().at().y()).millimetres());
  }

  @Test
  void aFreePlaceIsFoundNearWhereItIsWantedAndNoneOnAFullShelf() {
    Hand hand = Hand.of(WorkPlan.of(beakers()), "BK-003").orElseThrow();
    Optional<Tentative> free = hand.free("F1", Point.ofMillimetres(-60, 0), Angle.ZERO);
    assertThat(free).isPresent();
    assertThat(free.get().mayStand()).isTrue();
    double x = free.get().place().at().x().millimetres() + 60;
    double y = free.get().place().at().y().millimetres();
    assertThat(Math.hypot(x, y)).isLessThan(twoBeakersApart() + 10);
    assertThat(hand.free("no such layer", Point.ORIGIN, Angle.ZERO)).isEmpty();
  }
}
