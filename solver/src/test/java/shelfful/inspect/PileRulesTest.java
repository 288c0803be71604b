package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.BisqueWays;
import shelfful.fixture.Firings;
import shelfful.fixture.Forms;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Loads;
import shelfful.fixture.Studios;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;
import shelfful.ware.Hollow;
import shelfful.ware.PileWay;
import shelfful.ware.Piling;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/** What may rest on what, in scenes beside the planted faults. */
class PileRulesTest {
  private static final Form VASE = BisqueWays.with(Forms.vase(), BisqueWays.piled(2, 10));

  private static LoadDraft draft(Form form, int bowls, int beakers) {
    return new LoadDraft(
            BisqueWays.with(Studios.studio(), form),
            Firings.bisque("round"),
            "full",
            Batches.dry("D", form.id(), bowls),
            Batches.dry("S", "beaker", Math.max(1, beakers)))
        .level("F", "1in")
        .level("F", "8in")
        .place("F1", "D-001", 0, 0, 0);
  }

  private static LoadDraft bowls(int count, int beakers) {
    return draft(BisqueWays.bowlThatHolds("beaker"), count, beakers);
  }

  @Test
  void aLoadWithEveryWayBreaksNoRule() {
    assertThat(Limits.rules(Loads.piles())).isEmpty();
  }

  @Test
  void aBeakerMayStandInTheTopBowlOfAPile() {
    Load load =
        bowls(2, 1)
            .set("D-002", PileWay.NESTED, "D-001", 20)
            .set("S-001", PileWay.INSIDE, "D-002", 35)
            .load();
    assertThat(Limits.rules(load)).isEmpty();
  }

  @Test
  void nothingStandsOnAPair() {
    Load load =
        bowls(3, 1)
            .set("D-002", PileWay.RIM_TO_RIM, "D-001", 75)
            .set("D-003", PileWay.NESTED, "D-002", 95)
            .load();
    assertThat(Limits.rules(load)).contains("pileNotAllowed");
  }

  @Test
  void nothingStandsOnWhatStandsInAHollow() {
    Load load =
        draft(BisqueWays.bowlThatHolds("bowl", "beaker"), 2, 1)
            .set("S-001", PileWay.INSIDE, "D-001", 15)
            .set("D-002", PileWay.NESTED, "S-001", 35)
            .load();
    assertThat(Limits.rules(load)).contains("pileNotAllowed");
  }

  @Test
  void oneCarriesOne() {
    Load load =
        bowls(2, 1)
            .set("D-002", PileWay.NESTED, "D-001", 20)
            .set("S-001", PileWay.INSIDE, "D-001", 15)
            .load();
    assertThat(Limits.rules(load)).contains("pileNotAllowed");
  }

  @Test
  void aBowlOnItsRimCarriesAnotherFootToFoot() {
    LoadDraft alone =
        draft(BisqueWays.bowlThatHolds("beaker"), 2, 1).placeOnRim("F2", "D-002", 0, 0);
    assertThat(Limits.rules(alone.load())).containsOnly("pileNotAllowed");
  }

  @Test
  void twoThatRestOnEachOtherFloat() {
    Load load = bowls(3, 1).set("D-002", PileWay.NESTED, "D-001", 20).load();
    Layer layer = load.layers().get(0);
    Rest round = Rest.on("D-002", PileWay.NESTED, Length.ofMillimetres(40));
    Placement lowest = layer.placements().get(0);
    Placement over = new Placement("D-001", lowest.at(), lowest.turn(), false, round);
    Layer ringed = layer.holding(List.of(over, layer.placements().get(1)));
    Load ring =
        new Load(
            load.request(),
            load.columnPlanId(),
            List.of(ringed, load.layers().get(1)),
            load.posts(),
            load.leftOut());
    assertThat(Limits.rules(ring)).contains("pieceFloats");
  }

  @Test
  void nothingIsPiledInAGlazeFiring() {
    Load dry = bowls(2, 1).set("D-002", PileWay.NESTED, "D-001", 20).load();
    Load glaze =
        new LoadDraft(
                dry.request().studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("D", "bowl", "chalk", 2))
            .level("F", "1in")
            .level("F", "8in")
            .place("F1", "D-001", 0, 0, 0)
            .set("D-002", PileWay.NESTED, "D-001", 20)
            .load();
    assertThat(Limits.rules(dry)).isEmpty();
    assertThat(Limits.rules(glaze)).contains("pileNotAllowed");
  }

  /** Measured wet: dry it is 93.75 % as high, and so is the increment (6.25 % lost in drying). */
  @Test
  void theIncrementShrinksWithTheForm() {
    Load shrunk = draft(VASE, 2, 1).set("D-002", PileWay.NESTED, "D-001", 9.375).load();
    Load unshrunk = draft(VASE, 2, 1).set("D-002", PileWay.NESTED, "D-001", 10).load();
    assertThat(Limits.rules(shrunk)).isEmpty();
    assertThat(Limits.rules(unshrunk)).contains("pieceFloats");
  }

  /** 70 mm across and 1 mm each of tolerance all round: 74 mm, dry 1 % less of 74.7 mm. */
  @Test
  void theHollowShrinksWithTheForm() {
    assertThat(Limits.rules(inHollow(74.748))).isEmpty();
    assertThat(Limits.rules(inHollow(74.746))).contains("pieceWiderThanHollow");
  }

  private static Load inHollow(double clear) {
    Hollow hollow = new Hollow(Forms.round(clear), Length.ofMillimetres(60), List.of("beaker"));
    Form bowl = Forms.bowl();
    Form wet =
        new Form(
            bowl.id(),
            bowl.name(),
            Stage.WET,
            new Shrinkage(1, 0, 0),
            bowl.profile(),
            Optional.empty(),
            bowl.mass(),
            bowl.tolerance(),
            bowl.bareFoot(),
            new BisqueSetting(
                Optional.<Piling>empty(),
                false,
                false,
                Optional.of(hollow),
                Optional.<Mass>empty()));
    return draft(wet, 1, 1).set("S-001", PileWay.INSIDE, "D-001", 14.85).load();
  }

  /** Pieces of a pile are each a piece on the shelf's scales. */
  @Test
  void theShelfCarriesThePileWhole() {
    InspectedLoad load =
        ((Inspection.Passed)
                new Inspector()
                    .inspect(bowls(2, 1).set("D-002", PileWay.NESTED, "D-001", 20).load()))
            .load();
    assertThat(load.figures().get(0).mass()).isEqualTo(Mass.ofKilograms(1.2));
  }
}
