package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.ware.Stage;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

class ShelfCoverTest {
  @Test
  void onePieceOnOneShelfCoversItsShareOfTheDisc() {
    WeekPlan plan =
        new PlanAWeek(
                Weeks.week(
                    5,
                    List.of(Weeks.kiln("K1", Weeks.weekdays())),
                    List.of(Weeks.ware("A", "tower", 1, Stage.GLAZED, "2026-06-05"))))
            .run(WeekListener.none())
            .orElseThrow()
            .plan();
    PlannedFiring firing = plan.firings().get(0);
    PlannedFiringFigures figures = PlannedFiringFigures.of(plan, firing);
    // A disc of 380 mm on a disc of 540 mm: the squares of the diameters, by hand.
    double shelves = firing.load().orElseThrow().layers().size();
    assertThat(figures.cover().orElseThrow())
        .isCloseTo(380.0 * 380.0 / (540.0 * 540.0) / shelves, within(1e-9));
    assertThat(figures.pieces()).isEqualTo(1);
    assertThat(figures.latePieces()).isZero();
  }
}
