package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;

/** Loads that were planned without even spacing, and are spaced afterwards. */
class SpacedLoadTest {
  private static final double AS_FOUND = Double.POSITIVE_INFINITY;

  private static Load planned(LoadRequest request, double precision) {
    return new LoadPlanner(request)
        .spacedTo(precision)
        .plan(SearchBudget.ofSteps(10), better -> {});
  }

  private static double gap(Load load, Layer layer) {
    InspectedLoad judged = ((Inspection.Passed) new Inspector().inspect(load)).load();
    return judged.figures(layer.id()).smallestGap().map(Length::millimetres).orElse(0.0);
  }

  @Test
  void gapsGrowToWhatPlanningItselfWouldHaveMadeOfThem() {
    LoadRequest request =
        new Scene()
            .shelves(2)
            .cup("a", 90, 70)
            .cup("b", 60, 90)
            .batch("A", "a", 9)
            .batch("B", "b", 8)
            .request();
    Load asFound = planned(request, AS_FOUND);

    Load spaced = new LoadPlanner(request).spacedTo(0.25).spaced(asFound);

    assertThat(spaced.standing()).isEqualTo(asFound.standing());
    Load atOnce = planned(request, 0.25);
    int larger = 0;
    for (Layer layer : asFound.layers()) {
      double before = gap(asFound, layer);
      double after = gap(spaced, layer);
      assertThat(after).isGreaterThanOrEqualTo(before - 0.01);
      assertThat(after).isGreaterThan(gap(atOnce, layer) - 1);
      larger += after > before + 1 ? 1 : 0;
    }
    assertThat(larger).isPositive();
  }

  @Test
  void aLoadOfAnotherColumnPlanIsLeftAsItIs() {
    LoadRequest request = new Scene().cup("a", 90, 70).batch("A", "a", 5).request();
    Load load = planned(request, AS_FOUND);
    Load elsewhere =
        new Load(load.request(), "no such plan", load.layers(), load.posts(), load.leftOut());
    assertThat(new LoadPlanner(request).spaced(elsewhere)).isSameAs(elsewhere);
  }
}
