package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.review.InspectedWeek;
import shelfful.ware.Stage;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Freezing, moving and what-if, each planned again and judged. */
class ChangeAWeekTest {
  private static WeekPlan plan;

  @BeforeAll
  static void plan() {
    plan =
        planned(
            Weeks.week(
                14,
                List.of(Weeks.kiln("K1", Weeks.weekdays())),
                List.of(
                    Weeks.ware("A", "tower", 1, Stage.GLAZED, "2026-06-03"),
                    Weeks.ware("B", "drum", 2, Stage.GLAZED, "2026-06-04"),
                    Weeks.ware("C", "basin", 3, Stage.GLAZED, "2026-06-09"))));
  }

  private static WeekPlan planned(WeekRequest request) {
    InspectedWeek week = new PlanAWeek(request).run(WeekListener.none()).orElseThrow();
    return week.plan();
  }

  private static PlannedFiring firingOf(WeekPlan week, String batch) {
    return week.firings().stream()
        .filter(f -> f.portions().stream().anyMatch(p -> p.batchId().equals(batch)))
        .findFirst()
        .orElseThrow();
  }

  private static WeekRequest possible(WeekChange change) {
    assertThat(change).isInstanceOf(WeekChange.Possible.class);
    return ((WeekChange.Possible) change).request();
  }

  @Test
  void planningAgainChangesNothingWhenNothingIsBetter() {
    WeekPlan again = planned(ChangeAWeek.again(plan));

    assertThat(again.firings()).isEqualTo(plan.firings());
  }

  @Test
  void aFrozenFiringStaysToThePieceWhileAnOrderComesIn() {
    PlannedFiring last = firingOf(plan, "C");
    List<WareLine> order = List.of(Weeks.ware("N", "drum", 2, Stage.GLAZED, "2026-06-02"));
    WeekRequest asked = possible(ChangeAWeek.order(ChangeAWeek.freeze(plan, last.id()), order));

    WeekPlan after = planned(asked);

    assertThat(after.firing(last.id())).contains(last.held(Hold.ALL));
    assertThat(firingOf(after, "N").times().loads()).isBefore(firingOf(after, "C").times().loads());
  }

  @Test
  void anAddedFiringOnAHeldOneOrOutsideTheWeekIsRefusedWithASentence() {
    PlannedFiring held = firingOf(plan, "B");
    WeekRequest frozen = ChangeAWeek.freeze(plan, held.id());
    LocalDateTime inIt = held.times().loads().plusHours(3);

    WeekChange onto = ChangeAWeek.addFiring(frozen, "K1", "glaze", inIt);
    WeekChange before = ChangeAWeek.addFiring(frozen, "K1", "glaze", Weeks.START.minusDays(1));
    WeekChange after = ChangeAWeek.addFiring(frozen, "K1", "glaze", Weeks.START.plusDays(13));

    assertThat(((WeekChange.Refused) onto).sentence()).contains(held.id()).contains("release");
    assertThat(((WeekChange.Refused) before).sentence()).contains("begins at");
    assertThat(((WeekChange.Refused) after).sentence()).contains("unpacked");
  }

  @Test
  void aKilnOutOfOrderMakesLateWhatTheComparisonShows() {
    Span repair = new Span(Weeks.START.withHour(0), Weeks.START.plusDays(4));

    WeekPlan after =
        planned(possible(ChangeAWeek.outOfOrder(ChangeAWeek.again(plan), "K1", repair)));
    WeekComparison comparison = WeekComparison.of(plan, after);

    // The tower was due on Wednesday; from Friday on it is unpacked on Monday at the earliest.
    assertThat(comparison.before().latePieces()).isZero();
    assertThat(comparison.after().latePieces()).isEqualTo(3);
    assertThat(comparison.batches()).extracting(WeekComparison.Row::batchId).contains("A", "B");
  }

  @Test
  void anExtraFiringOnASaturdayMakesNothingLater() {
    LocalDateTime saturday = Weeks.START.plusDays(5);
    WeekRequest asked =
        possible(ChangeAWeek.addFiring(ChangeAWeek.again(plan), "K1", "glaze", saturday));

    WeekPlan after = planned(asked);

    assertThat(after.firings()).anyMatch(firing -> firing.times().loads().equals(saturday));
    assertThat(after.late()).isEmpty();
  }

  @Test
  void whatIsNotThereIsRefused() {
    WeekRequest again = ChangeAWeek.again(plan);

    assertThat(ChangeAWeek.addFiring(again, "K9", "glaze", Weeks.START))
        .isInstanceOf(WeekChange.Refused.class);
    assertThat(ChangeAWeek.order(again, again.lines())).isInstanceOf(WeekChange.Refused.class);
    assertThat(ChangeAWeek.outOfOrder(again, "K9", new Span(Weeks.START, Weeks.START.plusHours(1))))
        .isInstanceOf(WeekChange.Refused.class);
  }
}
