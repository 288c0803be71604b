package shelfful.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

class SampleLoadsTest {

  static Stream<SampleLoad> all() {
    return SampleLoads.all().stream();
  }

  @Test
  void namesAreUniqueAndEndInTheNumberOfPieces() {
    List<String> names = all().map(SampleLoad::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    for (SampleLoad sample : SampleLoads.all()) {
      int listed = sample.asked().batches().stream().mapToInt(batch -> batch.quantity()).sum();
      assertThat(sample.name()).endsWith("-" + listed);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void aFirstLoadPassesTheInspector(SampleLoad sample) {
    Load load = new LoadPlanner(sample.asked()).plan(SearchBudget.ofSteps(0), better -> {});

    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    int listed = sample.asked().pieces().size();
    System.out.println(sample.name() + " " + load.placed() + " of " + listed);
    if (sample.name().startsWith("everything-fits")) {
      assertThat(load.leftOut()).isEmpty();
    } else {
      assertThat(load.placed()).isBetween(listed * 2 / 5, listed * 17 / 20);
    }
  }
}
