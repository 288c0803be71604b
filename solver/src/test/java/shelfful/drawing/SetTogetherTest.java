package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

/** Layers over whose joint ware reaches are numbered and told as one; all others for themselves. */
class SetTogetherTest {
  private static final int PLANS = 200;

  private static Setting setting(long seed) {
    Load load = new LoadPlanner(RandomRequest.of(seed)).plan(SearchBudget.ofSteps(0), shown -> {});
    return new Setting(((Inspection.Passed) new Inspector().inspect(load)).load());
  }

  @Test
  void numbersRunThroughTheLayersSetTogether() {
    List<Setting> settings = LongStream.range(0, PLANS).mapToObj(SetTogetherTest::setting).toList();
    int together = 0;
    for (Setting setting : settings) {
      for (Layer layer : setting.layers()) {
        List<Layer> with = setting.setWith(layer);
        List<Integer> numbers =
            Stream.concat(Stream.of(layer), with.stream())
                .flatMap(one -> setting.on(one).stream())
                .map(SetPiece::number)
                .sorted()
                .toList();
        assertThat(numbers).isEqualTo(IntStream.rangeClosed(1, numbers.size()).boxed().toList());
        String told =
            new LayerHeading(setting, new LengthWords(setting.studio().unit())).first(layer);
        with.forEach(one -> assertThat(told).contains("together with").contains(one.id()));
        assertThat(told.contains("together")).isEqualTo(!with.isEmpty());
        together += with.isEmpty() ? 0 : 1;
      }
    }
    assertThat(together).isGreaterThanOrEqualTo(4);
  }
}
