package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.fixture.BisqueWays;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * Bisque firings that nobody thought of, of forms that may be piled, paired and nested at random:
 * every load on the way and the last are judged by counting and by the inspector. A failure names
 * its seed; {@code BisqueWays.random(seed)} is the request.
 */
class PilesOfRandomRequestsTest {
  private static final long STEPS = 4;

  @Test
  void loadsKeepTheRulesAndManyHavePiles() {
    assertGood(0, 200);
  }

  @Test
  @Tag("slow")
  void aThousandLoadsKeepTheRules() {
    assertGood(Long.getLong("firstCase", 0), Long.getLong("cases", 1000));
  }

  private static void assertGood(long first, long cases) {
    List<String> complaints = new ArrayList<>();
    int withPiles = 0;
    for (long seed : LongStream.range(first, first + cases).toArray()) {
      List<Load> shown = plan(BisqueWays.random(seed), seed, complaints);
      for (Load load : shown) {
        complain(load, seed, complaints);
      }
      boolean piled =
          shown.stream()
              .flatMap(load -> load.layers().stream())
              .flatMap(layer -> layer.placements().stream())
              .anyMatch(one -> !one.rest().isOnShelf());
      withPiles += piled ? 1 : 0;
    }
    assertThat(complaints).isEmpty();
    assertThat(withPiles).isGreaterThan((int) (cases / 4));
  }

  private static List<Load> plan(LoadRequest request, long seed, List<String> complaints) {
    List<Load> shown = new ArrayList<>();
    try {
      shown.add(new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), shown::add));
    } catch (RuntimeException broken) {
      complaints.add(seed + ": " + broken + " at " + List.of(broken.getStackTrace()).subList(0, 4));
    }
    return shown;
  }

  private static void complain(Load load, long seed, List<String> complaints) {
    RandomCases.wrong(load).forEach(wrong -> complaints.add(seed + ": " + wrong));
  }
}
