package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.app.ChangeAWeek;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.files.ReadResult;
import shelfful.files.WeekReader;
import shelfful.files.WeekWriter;
import shelfful.fixture.RandomWeek;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekEffort;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Plans weeks that nobody thought of; every week shown is judged, the same request gives the same
 * bytes, the file reads back, and a frozen firing stays. An ordinary build tries a few; a thousand
 * are tried by
 *
 * <pre>mvn -pl solver test -DskippedTags= -Dtest=PlanningOfRandomWeeksTest#manyRandomWeeks</pre>
 *
 * <p>A failure names its seed; {@code RandomWeek.of(seed)} is the request.
 */
class PlanningOfRandomWeeksTest {

  static LongStream fewSeeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void weeksKeepTheRules(long seed) {
    assertThat(complaints(seed, seed % 8 == 0)).as("seed " + seed).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {100, 101, 102, 103, 104, 105, 106, 107})
  void weeksEndedByTimeKeepTheRulesToo(long seed) {
    List<String> complaints = new ArrayList<>();
    WeekRequest request = RandomWeek.of(seed);
    WeekEffort effort = new WeekEffort(seed, 0, 6);

    Optional<InspectedWeek> week =
        new PlanAWeek(request.with(effort)).run(Duration.ofMillis(400), listener(complaints));

    assertThat(complaints).as("seed " + seed).isEmpty();
    assertThat(week).isPresent();
  }

  @Test
  @Tag("slow")
  void manyRandomWeeks() {
    long first = Long.getLong("firstCase", 0);
    long cases = Long.getLong("cases", 1000);
    List<String> complaints = new ArrayList<>();
    for (long seed = first; seed < first + cases; seed++) {
      for (String complaint : complaints(seed, true)) {
        complaints.add("seed " + seed + ": " + complaint);
      }
    }
    assertThat(complaints).isEmpty();
  }

  private static List<String> complaints(long seed, boolean twice) {
    List<String> complaints = new ArrayList<>();
    WeekRequest request = RandomWeek.of(seed);
    InspectedWeek week = plan(request, complaints);
    if (week == null) {
      return complaints;
    }
    byte[] bytes = WeekWriter.bytes(week);
    if (twice && !java.util.Arrays.equals(bytes, WeekWriter.bytes(plan(request, complaints)))) {
      complaints.add("planned again it is another week");
    }
    ReadResult<WeekPlan> read = WeekReader.plan("week.json", bytes);
    if (read.found().isEmpty()) {
      complaints.add("does not read back: " + read.problems());
    } else if (new WeekInspector().inspect(read.found().get())
        instanceof WeekInspection.Passed passed) {
      if (!java.util.Arrays.equals(bytes, WeekWriter.bytes(passed.week()))) {
        complaints.add("written again it is another file");
      }
    } else {
      complaints.add("read back it breaks rules");
    }
    if (seed % 3 == 0) {
      frozenStays(week, complaints);
    }
    return complaints;
  }

  /** The judge sees to it that what is held stays. */
  private static void frozenStays(InspectedWeek week, List<String> complaints) {
    Optional<PlannedFiring> last =
        week.plan().firings().stream()
            .filter(firing -> firing.load().isPresent())
            .reduce((first, second) -> second);
    if (last.isPresent()) {
      WeekRequest again = ChangeAWeek.freeze(week.plan(), last.get().id());
      InspectedWeek kept = plan(again, complaints);
      if (kept != null
          && !kept.plan()
              .firing(last.get().id())
              .map(PlannedFiring::portions)
              .equals(Optional.of(last.get().portions()))) {
        complaints.add("a frozen firing changed");
      }
    }
  }

  private static WeekListener listener(List<String> complaints) {
    return new WeekListener() {
      @Override
      public void better(InspectedWeek week) {}

      @Override
      public void refused(WeekPlan plan, List<WeekFinding> findings) {
        findings.forEach(finding -> complaints.add(finding.toString()));
      }
    };
  }

  private static InspectedWeek plan(WeekRequest request, List<String> complaints) {
    Optional<InspectedWeek> week = new PlanAWeek(request).run(listener(complaints));
    if (week.isEmpty()) {
      complaints.add("no week passed the judge");
    }
    return week.orElse(null);
  }
}
