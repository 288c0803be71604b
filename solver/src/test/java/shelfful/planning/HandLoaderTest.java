package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.sample.SampleLoad;
import shelfful.sample.SampleLoads;

class HandLoaderTest {

  private static final List<String> FEW =
      List.of("tall-60", "everything-fits-30", "scarce-shelves-100");

  static Stream<SampleLoad> some() {
    return SampleLoads.all().stream().filter(sample -> FEW.contains(sample.name()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("some")
  void loadsByHandKeepTheRulesToo(SampleLoad sample) {
    Load load = HandLoader.best(sample.asked());

    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
  }
}
