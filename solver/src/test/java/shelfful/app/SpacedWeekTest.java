package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.schedule.WeekPlanner;
import shelfful.ware.Stage;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekEffort;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

class SpacedWeekTest {
  private static WeekPlan asFound() {
    WeekRequest request =
        Weeks.week(
                7,
                List.of(Weeks.kiln("K1", Weeks.weekdays())),
                List.of(
                    Weeks.ware("A", "basin", 3, Stage.GLAZED, "2026-06-05"),
                    Weeks.ware("B", "drum", 3, Stage.GLAZED, "2026-06-05")))
            .with(new WeekEffort(1, 2, 4));
    WeekLoads loads = new WeekLoads(request.studio());
    loads.hurry(() -> false);
    return new WeekPlanner(request, loads).plan(week -> {});
  }

  private static double leastGap(Load load, String layerId) {
    InspectedLoad judged = ((Inspection.Passed) new Inspector().inspect(load)).load();
    return judged.figures(layerId).smallestGap().map(gap -> gap.millimetres()).orElse(1e9);
  }

  @Test
  void theSamePiecesGoIntoTheSameFiringsWithGapsThatAreNoSmaller() {
    WeekPlan before = asFound();

    WeekPlan after = new SpacedWeek(false, () -> {}).of(before);

    assertThat(new WeekInspector().inspect(after)).isInstanceOf(WeekInspection.Passed.class);
    for (int i = 0; i < before.firings().size(); i++) {
      PlannedFiring one = before.firings().get(i);
      PlannedFiring other = after.firings().get(i);
      assertThat(other.with(one.load())).isEqualTo(one);
      for (Layer layer : one.load().orElseThrow().layers()) {
        double was = leastGap(one.load().get(), layer.id());
        double is = leastGap(other.load().orElseThrow(), layer.id());
        assertThat(is).isGreaterThanOrEqualTo(was - 0.01);
      }
    }
  }
}
