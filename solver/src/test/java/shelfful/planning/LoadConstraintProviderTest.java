package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import org.optaplanner.test.api.score.stream.SingleConstraintAssertion;
import shelfful.ware.Batch;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Zone;

/** Each constraint not broken, just broken, and broken by a known amount. */
class LoadConstraintProviderTest {
  private final ConstraintVerifier<LoadConstraintProvider, KilnLoad> verifier =
      ConstraintVerifier.build(new LoadConstraintProvider(), KilnLoad.class, PieceChoice.class);

  private static Scene cups() {
    return new Scene()
        .cup("a", 60, 50)
        .cup("tall", 60, 110)
        .cup("wide", 142, 50)
        .cup("wider", 144, 50)
        .glaze("bottom", Set.of(Zone.BOTTOM), Set.of())
        .glaze("not-bottom", Set.of(), Set.of(Zone.BOTTOM))
        .glaze("chrome", Set.of(), Set.of())
        .glaze("tin", Set.of(), Set.of());
  }

  /** Judges pieces that stand, in list order, on these levels; −1 waits. */
  private SingleConstraintAssertion given(
      BiFunction<LoadConstraintProvider, ConstraintFactory, Constraint> constraint,
      Scene scene,
      int... levels) {
    Bench bench = Bench.of(scene.request());
    List<PieceChoice> pieces = bench.pieces();
    for (int i = 0; i < levels.length; i++) {
      pieces.get(i).setSlot(levels[i] < 0 ? null : new LayerSlot(0, levels[i], 0));
    }
    List<Object> facts = new ArrayList<>(pieces);
    facts.add(bench.rulebook());
    return verifier.verifyThat(constraint).given(facts.toArray());
  }

  private static int[] each(int count, int level) {
    int[] levels = new int[count];
    java.util.Arrays.fill(levels, level);
    return levels;
  }

  private static Batch mustGo(Batch batch) {
    return marked(batch, true, Optional.empty(), Optional.empty());
  }

  private static Batch marked(
      Batch batch, boolean mustGo, Optional<String> order, Optional<String> set) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        mustGo,
        3,
        batch.due(),
        order,
        set,
        batch.lidPlace());
  }

  @Test
  void theStackMustBeBuilt() {
    Scene scene = cups().batch("T", "tall", 4);
    // Two layers of 110 and one of up to 100 mm fill the chamber: 110 in the third is too much.
    given(LoadConstraintProvider::stackCannotBeBuilt, scene, 0, 1, -1, -1).penalizesBy(0);
    given(LoadConstraintProvider::stackCannotBeBuilt, scene, 0, 1, 2, -1).penalizesBy(1);
    Scene two = cups().shelves(2).batch("A", "a", 3);
    given(LoadConstraintProvider::stackCannotBeBuilt, two, 0, 1, 1).penalizesBy(0);
    given(LoadConstraintProvider::stackCannotBeBuilt, two, 0, 1, 2).penalizesBy(1);
  }

  /** Seven discs in a disc: R = 3 r (Pirl 1969), so 3 (d/2 + 3) = 220 + 3, d = 142.67 mm. */
  @Test
  void aLayerHoldsWhatFits() {
    Scene fits = cups().batch("W", "wide", 7);
    given(LoadConstraintProvider::layerHoldsTooMuch, fits, each(7, 0)).penalizesBy(0);
    Scene not = cups().batch("W", "wider", 14);
    given(LoadConstraintProvider::layerHoldsTooMuch, not, each(7, 0)).penalizesBy(1);
    given(LoadConstraintProvider::layerHoldsTooMuch, not, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1)
        .penalizesBy(2);
  }

  @Test
  void aShelfCarriesUpToItsLimit() {
    Scene scene = cups().shelvesCarry(2).batch("A", "a", 6);
    given(LoadConstraintProvider::shelfOverloaded, scene, 0, 0, 1, 1).penalizesBy(0);
    given(LoadConstraintProvider::shelfOverloaded, scene, 0, 0, 0, 1).penalizesBy(1);
    given(LoadConstraintProvider::shelfOverloaded, scene, 0, 0, 0, 1, 1, 1).penalizesBy(2);
  }

  @Test
  void glazesAreKeptApart() {
    Scene layer =
        cups()
            .apart(new KeptApart("chrome", "tin", Apartness.NOT_ON_ONE_LAYER, Optional.empty()))
            .batch("C", "a", "chrome", 2)
            .batch("T", "a", "tin", 2);
    given(LoadConstraintProvider::keptApart, layer, 0, 0, 1, 1).penalizesBy(0);
    given(LoadConstraintProvider::keptApart, layer, 0, 1, 1, -1).penalizesBy(1);
    given(LoadConstraintProvider::keptApart, layer, 0, 1, 0, 1).penalizesBy(2);
    Scene firing =
        cups()
            .apart(new KeptApart("chrome", "tin", Apartness.NOT_IN_ONE_FIRING, Optional.empty()))
            .batch("C", "a", "chrome", 2)
            .batch("T", "a", "tin", 2);
    given(LoadConstraintProvider::keptApart, firing, 0, 1, -1, -1).penalizesBy(0);
    given(LoadConstraintProvider::keptApart, firing, 0, 0, 1, -1).penalizesBy(1);
  }

  /** Under a second layer the first reaches from 30 to 110 mm of 400: the bottom. */
  @Test
  void forbiddenZonesCountByThePiece() {
    Scene scene = cups().batch("N", "a", "not-bottom", 3).batch("A", "a", 2);
    given(LoadConstraintProvider::zoneForbidden, scene, 1, 1, 1, 0, 0).penalizesBy(0);
    given(LoadConstraintProvider::zoneForbidden, scene, 0, 1, 1, 0, 0).penalizesBy(1);
    given(LoadConstraintProvider::zoneForbidden, scene, 0, 0, 0, 1, 1).penalizesBy(3);
  }

  @Test
  void setsGoInWhole() {
    Scene scene = cups().batch("A", "a", 3);
    scene.but(batch -> marked(batch, false, Optional.empty(), Optional.of("tea")));
    scene.batch("B", "tall", 3);
    scene.but(batch -> marked(batch, false, Optional.empty(), Optional.of("tea")));
    given(LoadConstraintProvider::setSplit, scene, 0, 0, -1, 0, 0, -1).penalizesBy(0);
    given(LoadConstraintProvider::setSplit, scene, 0, 0, -1, 0, -1, -1).penalizesBy(1);
    given(LoadConstraintProvider::setSplit, scene, 0, 0, 0, -1, -1, -1).penalizesBy(3);
  }

  @Test
  void mustGoPiecesAreMissedOneByOne() {
    Scene scene =
        cups().batch("A", "a", 3).but(LoadConstraintProviderTest::mustGo).batch("B", "a", 1);
    given(LoadConstraintProvider::mustGoWaits, scene, 0, 0, 0, -1).penalizesBy(0);
    given(LoadConstraintProvider::mustGoWaits, scene, 0, 0, -1, 0).penalizesBy(1);
    given(LoadConstraintProvider::mustGoWaits, scene, -1, -1, -1, 0).penalizesBy(3);
  }

  @Test
  void piecesAreRewardedByTheirWorth() {
    Scene scene =
        cups().batch("A", "a", 2).but(LoadConstraintProviderTest::mustGo).batch("B", "a", 2);
    given(LoadConstraintProvider::pieceGoesIn, scene, -1, -1, -1, -1).rewardsWith(0);
    given(LoadConstraintProvider::pieceGoesIn, scene, -1, -1, 0, -1).rewardsWith(100);
    given(LoadConstraintProvider::pieceGoesIn, scene, 0, 0, 0, -1).rewardsWith(700);
  }

  @Test
  void ordersAreWishedWhole() {
    Scene scene = cups();
    for (String order : List.of("one", "two")) {
      scene.batch(order, "a", 2);
      scene.but(batch -> marked(batch, false, Optional.of(order), Optional.empty()));
    }
    given(LoadConstraintProvider::orderSplit, scene, 0, 0, -1, -1).penalizesBy(0);
    given(LoadConstraintProvider::orderSplit, scene, 0, -1, 0, 0).penalizesBy(1);
    given(LoadConstraintProvider::orderSplit, scene, 0, -1, 0, -1).penalizesBy(2);
  }

  @Test
  void zonesNotLikedCountByThePiece() {
    Scene scene = cups().batch("L", "a", "bottom", 3).batch("A", "a", 1);
    given(LoadConstraintProvider::zoneNotLiked, scene, 0, 0, 0, 1).penalizesBy(0);
    given(LoadConstraintProvider::zoneNotLiked, scene, 0, 0, 1, 1).penalizesBy(1);
    given(LoadConstraintProvider::zoneNotLiked, scene, 1, 1, 1, 0).penalizesBy(3);
  }

  @Test
  void everyShelfUsedIsWork() {
    Scene scene = cups().batch("A", "a", 3);
    given(LoadConstraintProvider::layersToHandle, scene, -1, -1, -1).penalizesBy(0);
    given(LoadConstraintProvider::layersToHandle, scene, 0, 0, 0).penalizesBy(1);
    given(LoadConstraintProvider::layersToHandle, scene, 0, 1, 2).penalizesBy(3);
  }
}
