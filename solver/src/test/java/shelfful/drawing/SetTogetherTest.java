package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.LengthUnit;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

/** Layers over whose joint ware reaches are numbered and told as one; all others for themselves. */
class SetTogetherTest {
  private static final int PLANS = 200;

  private static InspectedLoad load(long seed) {
    Load load = new LoadPlanner(RandomRequest.of(seed)).plan(SearchBudget.ofSteps(0), shown -> {});
    return ((Inspection.Passed) new Inspector().inspect(load)).load();
  }

  private static Setting setting(long seed) {
    return new Setting(load(seed));
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

  /** What the phone's script goes by: one mark for all pages of such layers, none for others. */
  @Test
  void phoneLeadsThroughThemAsOne() {
    int together = 0;
    for (long seed = 0; seed < PLANS; seed++) {
      InspectedLoad load = load(seed);
      Setting setting = new Setting(load);
      String page = PhonePage.html(load, Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));
      for (Layer layer : setting.layers()) {
        String mark = markOf(page, layer);
        List<Layer> with = setting.setWith(layer);
        assertThat(mark.isEmpty()).isEqualTo(with.isEmpty());
        for (Layer other : setting.layers()) {
          boolean shared = !mark.isEmpty() && mark.equals(markOf(page, other));
          assertThat(shared).isEqualTo(with.contains(other) || other == layer && !with.isEmpty());
        }
        together += with.isEmpty() ? 0 : 1;
      }
    }
    assertThat(together).isGreaterThanOrEqualTo(4);
  }

  private static String markOf(String page, Layer layer) {
    Matcher section =
        Pattern.compile("<section data-page=\"" + layer.id() + ", [^\"]*\"([^>]*)>").matcher(page);
    assertThat(section.find()).isTrue();
    return section.group(1);
  }
}
