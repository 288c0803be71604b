package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.fixture.RandomRequest;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * Plans requests that nobody thought of and has every load judged: by counting, and by the
 * inspector. An ordinary build tries a few dozen; a thousand are tried by
 *
 * <pre>mvn -pl solver test -DskippedTags= -Dtest=PlanningOfRandomRequestsTest#manyRandomRequests
 * </pre>
 *
 * <p>with {@code -DargLine="-Dcases=5000 -DfirstCase=1000"} for other numbers. A failure names its
 * seed; {@code RandomRequest.of(seed)} is the request.
 */
class PlanningOfRandomRequestsTest {
  private static final long STEPS = 6;

  static LongStream fewSeeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void loadsKeepTheRules(long seed) {
    assertThat(complaints(seed)).as("seed " + seed).isEmpty();
  }

  @Test
  @Tag("slow")
  void manyRandomRequests() {
    assertThat(RandomCases.complaints(PlanningOfRandomRequestsTest::complaints)).isEmpty();
  }

  /** What is wrong with the loads shown on the way and with the last one. */
  private static List<String> complaints(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    List<String> complaints = new ArrayList<>();
    List<Load> shown = new ArrayList<>();
    try {
      shown.add(new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), shown::add));
    } catch (RuntimeException broken) {
      complaints.add(broken + " at " + List.of(broken.getStackTrace()).subList(0, 3));
    }
    shown.forEach(load -> complaints.addAll(RandomCases.wrong(load)));
    return complaints;
  }
}
