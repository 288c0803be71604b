package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.sample.SampleLoad;
import shelfful.sample.SampleLoads;

class LevelChoiceTest {
  private static final List<String> FEW = List.of("small-50", "halves-over-full-100");

  static Stream<SampleLoad> some() {
    return SampleLoads.all().stream().filter(sample -> FEW.contains(sample.name()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("some")
  void theLayersOfALoadMakeThatLoadAgain(SampleLoad sample) {
    Load load = firstLoad(sample);
    LevelPool pool = LevelPool.of(sample.asked(), List.of(load)).get(0);
    List<PooledLevel> levels = new ArrayList<>(pool.levels());
    Collections.reverse(levels);

    LevelChoice.Stacked again =
        new LevelChoice(pool, levels, counts(levels)).stacked().orElseThrow();

    assertThat(again.load().placed()).isEqualTo(load.placed());
    assertThat(again.load().layers()).hasSameSizeAs(load.layers());
    assertThat(new Inspector().inspect(again.load())).isInstanceOf(Inspection.Passed.class);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("some")
  void whatIsLeftOffWaits(SampleLoad sample) {
    Load load = firstLoad(sample);
    LevelPool pool = LevelPool.of(sample.asked(), List.of(load)).get(0);
    int[] fewer = counts(pool.levels());
    int bundle = pool.judge().ware().lots().get(0).bundle();
    for (Lot lot : pool.judge().ware().lots()) {
      fewer[lot.index()] = lot.bundle() == bundle ? 0 : fewer[lot.index()];
    }

    LevelChoice.Stacked less = new LevelChoice(pool, pool.levels(), fewer).stacked().orElseThrow();

    int wanted = 0;
    for (int count : fewer) {
      wanted += count;
    }
    assertThat(less.load().placed()).isEqualTo(wanted);
    assertThat(new Inspector().inspect(less.load())).isInstanceOf(Inspection.Passed.class);
  }

  private static Load firstLoad(SampleLoad sample) {
    return new LoadPlanner(sample.asked()).plan(SearchBudget.ofSteps(0), better -> {});
  }

  private static int[] counts(List<PooledLevel> levels) {
    int[] counts = new int[levels.get(0).counts()[0].length];
    for (PooledLevel level : levels) {
      for (int lot = 0; lot < counts.length; lot++) {
        counts[lot] += level.count(lot);
      }
    }
    return counts;
  }
}
