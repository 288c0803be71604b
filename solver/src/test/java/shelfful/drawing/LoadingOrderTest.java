package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.load.Layer;
import shelfful.measure.Length;

class LoadingOrderTest {
  private static Layer layer(String id, String column, int level) {
    return new Layer(id, column, level, 0, "any", Length.ofMillimetres(100.0 * level), List.of());
  }

  private static List<String> sorted(Layer... layers) {
    List<Layer> mixed = Arrays.asList(layers);
    Collections.reverse(mixed);
    return new LoadingOrder(Pottery.drum("drum").columnPlans().get(0))
        .sorted(mixed).stream().map(Layer::id).toList();
  }

  @Test
  void loadsWhatCarriesBeforeWhatStandsOnIt() {
    assertThat(
            sorted(
                layer("base 1", "base", 1), layer("base 2", "base", 2), layer("left 1", "left", 1)))
        .containsExactly("base 1", "base 2", "left 1");
  }

  @Test
  void loadsColumnsSideBySideLevelByLevel() {
    assertThat(
            sorted(
                layer("left 1", "left", 1),
                layer("right 1", "right", 1),
                layer("left 2", "left", 2),
                layer("right 2", "right", 2)))
        .containsExactly("left 1", "right 1", "left 2", "right 2");
  }
}
