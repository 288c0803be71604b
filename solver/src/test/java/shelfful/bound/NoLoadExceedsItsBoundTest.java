package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.fixture.BisqueWays;
import shelfful.fixture.RandomRequest;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;
import shelfful.ware.Piece;

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
    assertWithin(RandomRequest.of(seed), seed);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void planWithPilesIsWithinItsBound(long seed) {
    assertWithin(BisqueWays.random(seed), seed);
  }

  private static void assertWithin(LoadRequest request, long seed) {
    LoadBound bound = LoadBound.of(request);
    bound.refine(REFINED);
    Load load = new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), better -> {});
    assertThat(load.placed()).as("seed " + seed).isLessThanOrEqualTo(bound.mostPieces());
    assertThat(worth(load)).as("seed " + seed).isLessThanOrEqualTo(bound.mostWorth());
  }

  /** A hundred points a piece times its priority, twice that when it is due soon. */
  private static long worth(Load load) {
    LoadRequest request = load.request();
    int soon = request.studio().rules().dueSoonDays();
    Map<String, Long> worth = new HashMap<>();
    for (Piece piece : request.pieces()) {
      boolean due =
          request.day().isPresent()
              && piece.batch().due().isPresent()
              && !piece.batch().due().get().isAfter(request.day().get().plusDays(soon));
      worth.put(piece.id(), 100L * piece.batch().priority() * (due ? 2 : 1));
    }
    return load.layers().stream()
        .flatMap(layer -> layer.placements().stream())
        .mapToLong(placement -> worth.get(placement.pieceId()))
        .sum();
  }
}
