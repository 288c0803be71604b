package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.fixture.Batches;
import shelfful.fixture.BisqueWays;
import shelfful.fixture.Firings;
import shelfful.fixture.RandomRequest;
import shelfful.fixture.Studios;
import shelfful.load.Firing;
import shelfful.load.KeptSetting;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Zone;

/**
 * Small lists with every check of the engine on: it derives each score anew before and after each
 * move and its undoing, and throws at the first difference.
 */
class PlannerFullAssertTest {
  private static final long STEPS = 25;

  static Stream<String> lists() {
    return requests().keySet().stream();
  }

  private static Map<String, LoadRequest> requests() {
    Map<String, LoadRequest> requests = new LinkedHashMap<>();
    requests.put("one size", new Scene().cup("a", 90, 60).batch("A", "a", 30).request());
    requests.put("glazes apart and zones", apart());
    requests.put("halves over full", studio("halvesOverFull", 12));
    requests.put("full over halves", studio("fullOverHalves", 9));
    requests.put("drawn at random", RandomRequest.of(54));
    requests.put("piles drawn at random", BisqueWays.random(54));
    requests.put("piles, with pins and a locked layer", kept(piles(30)));
    requests.put("with pins and a locked layer", kept(studio("halvesOverFull", 12)));
    requests.put("glazes apart, with pins", kept(apart()));
    return requests;
  }

  /** Every third piece of a first load stays, and its lowest layer as it is. */
  private static LoadRequest kept(LoadRequest request) {
    Load load = new LoadPlanner(request).plan(SearchBudget.ofSteps(2), better -> {});
    Set<String> pins =
        load.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(Placement::pieceId)
            .filter(id -> Integer.parseInt(id.substring(id.length() - 3)) % 3 == 0)
            .collect(Collectors.toSet());
    assertThat(pins).isNotEmpty();
    return request.keeping(KeptSetting.of(load, pins, Set.of(load.layers().get(0).id())));
  }

  /** Bowls that nest six high and take a cup inside, and a few dishes besides. */
  private static LoadRequest piles(int bowls) {
    return new Scene()
        .firing(new Firing("K", FiringKind.BISQUE, new Cone("04"), 0, Atmosphere.OXIDATION))
        .form(BisqueWays.bowlThatHolds("cup"))
        .form(Scene.drum("cup", 60, 50))
        .cup("dish", 130, 40)
        .batch("B", "bowl", bowls)
        .but(PlainBatch::dry)
        .batch("C", "cup", 20)
        .but(PlainBatch::dry)
        .batch("D", "dish", 8)
        .but(PlainBatch::dry)
        .request();
  }

  private static LoadRequest apart() {
    return new Scene()
        .cup("a", 90, 60)
        .cup("b", 130, 120)
        .glaze("chrome", Set.of(), Set.of(Zone.TOP))
        .glaze("tin", Set.of(Zone.MIDDLE), Set.of())
        .apart(new KeptApart("chrome", "tin", Apartness.NOT_ON_ONE_LAYER, Optional.empty()))
        .batch("C", "a", "chrome", 9)
        .batch("T", "a", "tin", 9)
        .batch("U", "b", "tin", 7)
        .request();
  }

  private static LoadRequest studio(String plan, int each) {
    List<Batch> batches =
        List.of(
            Batches.glazed("M", "mug", "moss", each),
            Batches.glazed("V", "vase", "rain", each / 2),
            Batches.glazed("B", "bowl", "chalk", each));
    return new LoadRequest(
        Studios.studio(),
        batches,
        Firings.glaze("round"),
        Optional.of(plan),
        Optional.empty(),
        3,
        STEPS);
  }

  @ParameterizedTest
  @MethodSource("lists")
  void noScoreIsEverStale(String name) {
    LoadRequest request = requests().get(name);
    LoadPlanner planner = new LoadPlanner(request, EnvironmentMode.FULL_ASSERT);
    Load load = planner.plan(SearchBudget.ofSteps(STEPS), better -> {});
    assertThat(load.placed()).isPositive();
    assertThat(LoadAccount.wrong(load)).isEmpty();
  }
}
