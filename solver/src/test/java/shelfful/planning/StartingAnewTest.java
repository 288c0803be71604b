package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.fixture.RandomRequest;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/** Loads begun anew in a search that ends by time. */
class StartingAnewTest {
  private static final int ROUND = 100;
  private static final long LONG_ENOUGH = 1500;

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  static LongStream fewSeeds() {
    return LongStream.range(0, 4);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nothingIsLostByAStart(long seed) {
    PlanDesk desk = desk(RandomRequest.of(seed));
    desk.greedy();
    desk.searchOn(SearchBudget.ofSteps(12), 1, () -> {});
    Merit before = desk.merit();
    desk.startAnew(SearchBudget.ofSteps(2), ROUND, () -> {});
    assertThat(desk.merit()).isGreaterThanOrEqualTo(before);
    assertThat(RandomCases.wrong(desk.asFound())).isEmpty();
  }

  @Test
  void whatAStartCameToIsTakenWhereItIsBetter() {
    Set<Integer> gained = new HashSet<>();
    for (int seed = 0; seed < 20; seed++) {
      PlanDesk desk = desk(RandomRequest.of(seed));
      desk.coarse();
      Merit coarse = desk.merit();
      desk.startAnew(SearchBudget.ofSteps(30), ROUND, () -> {});
      assertThat(RandomCases.wrong(desk.asFound())).isEmpty();
      if (desk.merit().compareTo(coarse) > 0) {
        gained.add(seed);
      }
    }
    assertThat(gained).isNotEmpty();
  }

  @Test
  void everyStartIsAnotherLoad() {
    Bench bench = Bench.of(RandomRequest.of(3));
    Set<String> loads = new HashSet<>();
    for (int start = 0; start < 10; start++) {
      Sketch sketch = bench.rulebook().bench().rebuilder().greedy(new Random(start));
      assertThat(bench.judge().judge(sketch.copy()).broken()).isZero();
      List<String> levels = new ArrayList<>();
      for (int[] at : Rebuilder.levels(sketch)) {
        levels.add(Arrays.toString(sketch.counts(at[0], at[1], 0)));
      }
      loads.add(levels.toString());
    }
    assertThat(loads).hasSizeGreaterThan(1);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void loadsPlannedInTimeKeepTheRules(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    List<Load> shown = new ArrayList<>();
    SearchBudget budget = SearchBudget.ofMillis(LONG_ENOUGH, () -> System.nanoTime() / 1_000_000);
    shown.add(new LoadPlanner(request).plan(budget, shown::add));
    for (Load load : shown) {
      assertThat(RandomCases.wrong(load)).isEmpty();
    }
  }

  private static PlanDesk desk(LoadRequest request) {
    Stand stand = Stand.all(request, request.columnPlanId()).get(0);
    ReadyWare ware = new LotSorter(request).sort(piece -> Optional.empty());
    return new PlanDesk(stand, ware, EnvironmentMode.REPRODUCIBLE, 1, () -> false);
  }
}
