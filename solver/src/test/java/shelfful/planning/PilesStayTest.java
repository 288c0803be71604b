package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shelfful.fixture.BisqueWays;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Firing;
import shelfful.load.KeptProblem;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/** Piles that stay where they stand when the firing is planned again. */
class PilesStayTest {
  private static final long STEPS = 15;

  private static LoadRequest bowls() {
    return new Scene()
        .firing(new Firing("K", FiringKind.BISQUE, new Cone("04"), 0, Atmosphere.OXIDATION))
        .form(BisqueWays.bowlThatHolds("cup"))
        .form(Scene.drum("cup", 60, 50))
        .batch("B", "bowl", 40)
        .but(PlainBatch::dry)
        .batch("C", "cup", 40)
        .but(PlainBatch::dry)
        .request();
  }

  private static Load plan(LoadPlanner planner) {
    Load load = planner.plan(SearchBudget.ofSteps(STEPS), better -> {});
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    return load;
  }

  private static List<Placement> resting(Load load) {
    return load.layers().stream()
        .flatMap(layer -> layer.placements().stream())
        .filter(one -> !one.rest().isOnShelf())
        .toList();
  }

  @Test
  void pinningOnePieceKeepsItsWholePile() {
    Load load = plan(new LoadPlanner(bowls()));
    Placement upper = resting(load).get(0);
    KeptSetting kept = KeptSetting.of(load, Set.of(upper.pieceId()), Set.of());
    assertThat(kept.pieces()).hasSizeGreaterThan(1);
    Load again = plan(new LoadPlanner(bowls().keeping(kept)));
    Set<PinnedPiece> standing =
        again.layers().stream()
            .flatMap(
                layer ->
                    layer.placements().stream()
                        .map(one -> PinnedPiece.of(LayerPlace.of(layer), one)))
            .collect(Collectors.toSet());
    assertThat(standing).containsAll(kept.pieces());
  }

  @Test
  void aPieceIsNotKeptWithoutWhatCarriesIt() {
    Load load = plan(new LoadPlanner(bowls()));
    Placement upper = resting(load).get(0);
    KeptSetting whole = KeptSetting.of(load, Set.of(upper.pieceId()), Set.of());
    List<PinnedPiece> alone =
        whole.pieces().stream().filter(pin -> pin.pieceId().equals(upper.pieceId())).toList();
    LoadRequest asked = bowls().keeping(new KeptSetting(load.columnPlanId(), alone, List.of()));
    assertThat(new LoadPlanner(asked).keptProblems())
        .extracting(KeptProblem::code)
        .containsOnly(KeptProblem.Code.PILE_NOT_WHOLE);
  }

  @Test
  void planningAgainFromALoadWithPilesMovesNothingForNothing() {
    Load load = plan(new LoadPlanner(bowls()));
    assertThat(resting(load)).isNotEmpty();
    Load again = plan(new LoadPlanner(bowls()).startFrom(load, true));
    int moved = new SmallChange(bowls(), load).moved(again);
    int more = again.placed() - load.placed();
    assertThat(more).isNotNegative();
    assertThat(moved).isLessThanOrEqualTo(SmallChange.MOVED_FOR_ONE * more);
  }
}
