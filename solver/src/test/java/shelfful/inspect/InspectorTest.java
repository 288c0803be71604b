package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.inspect.Scenes.chalk;
import static shelfful.inspect.Scenes.mm;
import static shelfful.inspect.Scenes.round;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Loads;
import shelfful.load.Load;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.ware.Zone;

class InspectorTest {
  private final Inspector inspector = new Inspector();

  private List<LayerFigures> figures(Load load) {
    return ((Inspection.Passed) inspector.inspect(load)).load().figures();
  }

  @Test
  void measuresEveryLayerInTheOrderOfTheLoad() {
    Load load =
        round(chalk("A", "beaker", 3), chalk("P", "platter", 1))
            .place("F1", "A-001", 0, 0, 0)
            .place("F1", "A-002", 90, 0, 0)
            .place("F1", "A-003", 0, 120, 0)
            .place("F2", "P-001", 0, 0, 45)
            .load();
    // F1 lies at 41.4 mm under posts of 101.6, F2 at 159 mm under a lid at 686.
    assertThat(figures(load))
        .containsExactly(
            new LayerFigures(
                "F1", Optional.of(mm(20)), mm(101.6), Mass.ofKilograms(0.84), Zone.BOTTOM),
            new LayerFigures("F2", Optional.empty(), mm(527), Mass.ofKilograms(1.1), Zone.MIDDLE));
  }

  @Test
  void roundsGapsDownAndNeverUp() {
    // The middles are √2 · 80 mm = 113.1370… mm apart, the gap is 43.1370… mm.
    Load load =
        round(chalk("A", "beaker", 2))
            .place("F1", "A-001", -40, -40, 0)
            .place("F1", "A-002", 40, 40, 0)
            .load();
    assertThat(figures(load).get(0).smallestGap()).contains(new Length(43_137));
    assertThat(inspector.gapBetween(load, "A-001", "A-002")).contains(new Length(43_137));
  }

  @Test
  void measuresGapsInLoadsThatBreakRules() {
    Load load =
        round(chalk("A", "beaker", 2))
            .place("F1", "A-001", 0, 0, 0)
            .place("F1", "A-002", 60, 0, 0)
            .load();
    assertThat(inspector.gapBetween(load, "A-001", "A-002")).contains(mm(-10));
    assertThat(inspector.gapBetween(load, "A-002", "A-001")).contains(mm(-10));
  }

  @Test
  void measuresNoGapBetweenPiecesThatShareNoHeightOrDoNotStand() {
    Load load =
        round(chalk("A", "beaker", 3))
            .place("F1", "A-001", 0, 0, 0)
            .place("F2", "A-002", 0, 0, 0)
            .load();
    assertThat(inspector.gapBetween(load, "A-001", "A-002")).isEmpty();
    assertThat(inspector.gapBetween(load, "A-001", "A-003")).isEmpty();
    assertThat(inspector.gapBetween(load, "A-001", "?")).isEmpty();
  }

  @Test
  void findsTheSmallestGapOfManyPieces() {
    Load load = Loads.fiveHundred();
    assertThat(figures(load))
        .extracting(LayerFigures::smallestGap)
        .containsOnly(Optional.of(mm(10)));
  }

  @Test
  void saysWhatIsWrongWithItsFiguresAndHowToMendIt() {
    Load load =
        round(chalk("A", "beaker", 2))
            .place("F1", "A-001", 0, 0, 0)
            .place("F1", "A-002", 75, 0, 0)
            .load();
    assertThat(Limits.findings(load))
        .containsExactly(
            new Finding(
                "piecesTooClose",
                Finding.Severity.BREAKS,
                "F1",
                List.of("A-001", "A-002"),
                "The gap between A-001 and A-002 is 5 mm, but 8.4 mm is needed."
                    + " Move them 3.4 mm farther apart, or one to another layer."));
  }

  @Test
  void tellsFiguresApartThatRoundToTheSame() {
    Wording wording = new Wording(LengthUnit.MILLIMETRES);
    assertThat(wording.butNeeds(6_350, 6_400)).isEqualTo("a hair under the 6.4 mm needed");
    assertThat(wording.missing(6_350, 6_400)).isEqualTo("0.1 mm");
    Wording inches = new Wording(LengthUnit.INCHES);
    assertThat(inches.butNeeds(25_400, 50_800)).isEqualTo("1 in, but 2 in is needed");
    assertThat(inches.missing(50_799, 50_800)).isEqualTo("1/16 in");
  }

  @Test
  void putsBrokenRulesBeforeWishes() {
    Load load =
        round(
                Scenes.withClearances(
                    old ->
                        new shelfful.studio.Clearances(
                            old.glazedToGlazed(),
                            old.bisqueToBisque(),
                            old.wareToPost(),
                            old.wareToWall(),
                            old.wareToKeepOut(),
                            old.footToShelfEdge(),
                            old.headroom(),
                            old.underLid(),
                            mm(26),
                            mm(200))),
                List.of("4in"),
                chalk("A", "beaker", 1))
            .place("F1", "A-001", 0, 0, 0)
            .load();
    assertThat(Limits.rules(load))
        .containsExactly(Rule.SHELF_TOO_LOW.id(), Rule.LAYER_LOWER_THAN_WISHED.id());
  }
}
