package shelfful.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

class SampleLoadsTest {
  private static final int LONG_LIST = 600;

  static Stream<SampleLoad> ordinary() {
    return SampleLoads.all().stream().filter(sample -> listed(sample) < LONG_LIST);
  }

  static Stream<SampleLoad> large() {
    return SampleLoads.all().stream().filter(sample -> listed(sample) >= LONG_LIST);
  }

  @Test
  void namesAreUniqueAndEndInTheNumberOfPieces() {
    List<String> names = SampleLoads.all().stream().map(SampleLoad::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    for (SampleLoad sample : SampleLoads.all()) {
      assertThat(sample.name()).endsWith("-" + listed(sample));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ordinary")
  void aFirstLoadIsFullAndPassesTheInspector(SampleLoad sample) {
    requireSoundFirstLoad(sample);
  }

  /** Takes ten seconds or more, so not in every build. */
  @Tag("slow")
  @ParameterizedTest(name = "{0}")
  @MethodSource("large")
  void aLargeFirstLoadIsFullAndPassesTheInspector(SampleLoad sample) {
    requireSoundFirstLoad(sample);
  }

  private static void requireSoundFirstLoad(SampleLoad sample) {
    Load load = new LoadPlanner(sample.asked()).plan(SearchBudget.ofSteps(0), better -> {});

    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    if (sample.name().startsWith("everything-fits")) {
      assertThat(load.leftOut()).isEmpty();
    } else {
      // Lists have 25 to 150 percent more than a first load takes: see SampleLoads.
      int pieces = sample.asked().pieces().size();
      assertThat(load.placed()).isBetween(pieces * 2 / 5, pieces * 4 / 5);
    }
  }

  private static int listed(SampleLoad sample) {
    return sample.asked().batches().stream().mapToInt(batch -> batch.quantity()).sum();
  }
}
