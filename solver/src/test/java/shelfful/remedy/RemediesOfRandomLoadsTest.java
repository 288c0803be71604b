package shelfful.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.InspectedLoad;

/**
 * Explains what waits in loads nobody thought of, and holds every claim against the load. An
 * ordinary build takes thirty loads, the slow run three hundred; each tells what it found when it
 * fails.
 */
class RemediesOfRandomLoadsTest {
  private static final RemedyEffort LITTLE = new RemedyEffort(1, 1, 2, false);
  private static final RemedyEffort MORE = new RemedyEffort(2, 2, 3, false);
  private static final long STEPS = 4;

  @Test
  void everyClaimOfThirtyLoadsHolds() {
    check(30, LITTLE);
  }

  @Test
  @Tag("slow")
  void everyClaimOfThreeHundredLoadsHolds() {
    check(300, MORE);
  }

  private static void check(int loads, RemedyEffort effort) {
    List<String> wrong = new ArrayList<>();
    Map<RemedyKind, Integer> cheapest = new EnumMap<>(RemedyKind.class);
    int groups = 0;
    int none = 0;
    for (long seed = 0; seed < loads; seed++) {
      Optional<InspectedLoad> load =
          new PlanALoad(RandomRequest.of(seed))
              .run(SearchLength.ofSteps(STEPS), PlanListener.none());
      List<Explanation> explanations =
          new RemedySearch(load.orElseThrow(), effort).explain(one -> {});
      long at = seed;
      Claims.wrong(load.get(), explanations).forEach(one -> wrong.add("seed " + at + ": " + one));
      groups += explanations.size();
      for (Explanation one : explanations) {
        none += one.remedies().isEmpty() ? 1 : 0;
        one.remedies().stream()
            .findFirst()
            .ifPresent(remedy -> cheapest.merge(remedy.kind(), 1, Integer::sum));
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(groups).as("groups explained").isGreaterThan(loads);
    assertThat(none).as("groups without a remedy, of which that is said").isLessThan(groups);
    assertThat(cheapest.keySet())
        .as("cheapest remedies of %d groups, %d without one: %s", groups, none, cheapest)
        .contains(RemedyKind.NEXT_FIRING);
  }
}
