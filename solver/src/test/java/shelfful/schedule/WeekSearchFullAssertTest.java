package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.Weeks;
import shelfful.ware.Stage;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * With the engine's own checks on, every change it makes is undone exactly, and the week reaches
 * what can be counted by hand.
 */
class WeekSearchFullAssertTest {

  @ParameterizedTest
  @EnumSource(
      value = EnvironmentMode.class,
      names = {"REPRODUCIBLE", "FULL_ASSERT"})
  void sevenBasinsAndTwoDrumsTakeFourFirings(EnvironmentMode mode) {
    WeekRequest request =
        Weeks.week(
            14,
            List.of(Weeks.kiln("K1", Weeks.weekdays()), Weeks.kiln("K2", Weeks.weekdays())),
            List.of(
                Weeks.ware("A", "basin", 7, Stage.GLAZED, "2026-06-12"),
                Weeks.ware("B", "drum", 2, Stage.GLAZED, "2026-06-12")));
    LoadSource loads =
        load -> new PlanALoad(load).run(SearchLength.ofSteps(0), PlanListener.none());

    WeekPlan plan = new WeekPlanner(request, loads, mode).plan(better -> {});

    // Three basins to a firing, two drums to one: 3 + 3 + 1 and 2, or a drum with a basin, twice.
    assertThat(plan.firings()).hasSize(4);
    assertThat(plan.waiting()).isEmpty();
    assertThat(plan.late()).isEmpty();
  }
}
