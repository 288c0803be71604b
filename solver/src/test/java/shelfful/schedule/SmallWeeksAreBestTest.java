package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.fixture.Weeks;
import shelfful.ware.Stage;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.Late;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Small weeks whose best is found by trying everything: no less late, no fewer firings. */
class SmallWeeksAreBestTest {

  static Stream<Arguments> weeks() {
    List<KilnWork> one = List.of(Weeks.kiln("K1", Weeks.weekdays()));
    List<KilnWork> two =
        List.of(Weeks.kiln("K1", Weeks.weekdays()), Weeks.kiln("K2", Weeks.weekdays()));
    KilnCalendar always = Weeks.always();
    return Stream.of(
        Arguments.of(
            "one kind, three to a firing",
            Weeks.week(14, one, List.of(glazed("A", "basin", 5, "2026-06-12")))),
        Arguments.of(
            "what is due first must go first",
            Weeks.week(
                14,
                one,
                List.of(
                    glazed("A", "tower", 2, "2026-06-12"),
                    glazed("B", "drum", 1, "2026-06-02"),
                    glazed("C", "basin", 1, "2026-06-04")))),
        Arguments.of(
            "late whatever is done",
            Weeks.week(
                14,
                one,
                List.of(
                    glazed("A", "tower", 2, "2026-06-02"), glazed("B", "drum", 2, "2026-06-03")))),
        Arguments.of(
            "two firings each, one kiln",
            Weeks.week(
                14,
                one,
                List.of(
                    ware("A", "basin", 3, Stage.BONE_DRY, "2026-06-09"),
                    ware("B", "drum", 1, Stage.BONE_DRY, "2026-06-12")))),
        Arguments.of(
            "two kilns, mixed stages",
            Weeks.week(
                12,
                two,
                List.of(
                    ware("A", "basin", 2, Stage.BONE_DRY, "2026-06-08"),
                    glazed("B", "drum", 2, "2026-06-02"),
                    ware("C", "basin", 1, Stage.LEATHER_HARD, "2026-06-10")))),
        Arguments.of(
            "waiting a day saves a firing",
            Weeks.week(
                10,
                List.of(Weeks.kiln("K1", always)),
                List.of(
                    ware("A", "drum", 1, Stage.BISQUE, "2026-06-09"),
                    new WareLine(
                        glazed("B", "drum", 1, "2026-06-09").batch(),
                        java.util.Optional.empty(),
                        java.util.Optional.of(Weeks.START.plusDays(1)))))),
        Arguments.of(
            "the week is too short for all",
            Weeks.week(
                4,
                one,
                List.of(
                    glazed("A", "tower", 3, "2026-06-04"), glazed("B", "basin", 1, "2026-06-03")))),
        Arguments.of(
            "which two share a firing matters",
            Weeks.week(
                14,
                one,
                List.of(
                    glazed("A", "drum", 1, "2026-06-02"),
                    glazed("B", "basin", 3, "2026-06-03"),
                    glazed("C", "drum", 1, "2026-06-05")))));
  }

  private static WareLine glazed(String id, String form, int quantity, String due) {
    return ware(id, form, quantity, Stage.GLAZED, due);
  }

  private static WareLine ware(String id, String form, int quantity, Stage stage, String due) {
    return Weeks.ware(id, form, quantity, stage, due);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("weeks")
  void noWayIsBetter(String what, WeekRequest request) {
    WeekPlan plan = new PlanAWeek(request).run(WeekListener.none()).orElseThrow().plan();

    assertThat(figures(plan)).as(what).isEqualTo(EveryWeek.best(request));
  }

  private static List<Long> figures(WeekPlan plan) {
    long late = plan.late().stream().mapToLong(one -> (long) one.pieces() * one.days()).sum();
    long missed = 0;
    for (WareLine line : plan.request().lines()) {
      missed += (long) line.needs().size() * line.batch().quantity();
    }
    missed -= plan.firings().stream().mapToLong(firing -> firing.pieces()).sum();
    for (var waiting : plan.waiting()) {
      var due = plan.request().line(waiting.portion().batchId()).orElseThrow().batch().due();
      long days = ChronoUnit.DAYS.between(due.orElseThrow(), plan.request().end().toLocalDate());
      late += days > 0 ? (days + 1) * waiting.portion().size() : 0;
    }
    assertThat(plan.late()).allMatch((Late one) -> one.days() > 0);
    return List.of(late, missed, (long) plan.firings().size());
  }
}
