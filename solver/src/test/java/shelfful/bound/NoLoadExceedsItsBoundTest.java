package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.fixture.RandomRequest;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

/** Whatever the planner finds for a request that nobody thought of is within the bound. */
class NoLoadExceedsItsBoundTest {
  private static final long STEPS = 6;
  private static final int REFINED = 40;

  static LongStream seeds() {
    long first = Long.getLong("firstCase", 0);
    return LongStream.range(first, first + Long.getLong("cases", 60));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void planOfRandomRequestIsWithinItsBound(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    LoadBound bound = LoadBound.of(request);
    bound.refine(REFINED);
    Load load = new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), better -> {});
    assertThat(load.placed()).as("seed " + seed).isLessThanOrEqualTo(bound.mostPieces());
  }
}
