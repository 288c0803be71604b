package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.ware.FiringKind;
import shelfful.ware.Stage;
import shelfful.week.KilnWork;
import shelfful.week.Waiting;
import shelfful.week.Waiting.Reason;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** What is said of ware that waits is true of that ware, also where it waits for its set. */
class WaitingWordsTest {
  private static WeekRequest onlyGlaze(List<WareLine> lines) {
    KilnWork kiln =
        new KilnWork("K1", Weeks.weekdays(), OptionalDouble.empty(), List.of(Weeks.glaze()));
    return Weeks.week(7, List.of(kiln), lines);
  }

  /** Every load is refused: nothing that waits here may ever need one. */
  private static WeekPlan planned(WeekRequest request) {
    WeekPlan plan = new WeekPlanner(request, load -> Optional.empty()).plan(week -> {});
    assertThat(new WeekInspector().inspect(plan)).isInstanceOf(WeekInspection.Passed.class);
    return plan;
  }

  private static Waiting of(WeekPlan plan, String batch) {
    return plan.waiting().stream()
        .filter(waiting -> waiting.portion().batchId().equals(batch))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPieceThatNeedsNoBisqueWaitsForTheBisqueOfItsSetAndIsNotSaidToHaveNoGlazeProgram() {
    WeekPlan plan =
        planned(
            onlyGlaze(
                List.of(
                    Weeks.inSet("A", "basin", 2, Stage.BONE_DRY, "6"),
                    Weeks.inSet("B", "basin", 2, Stage.GLAZED, "6"))));

    assertThat(of(plan, "A").kind()).isEqualTo(FiringKind.BISQUE);
    assertThat(of(plan, "B").kind()).isEqualTo(FiringKind.GLAZE);
    assertThat(of(plan, "B").reason()).isEqualTo(Reason.NO_PROGRAM);
    assertThat(of(plan, "B").sentence()).contains("bisque program").contains("set");
    assertThat(of(plan, "B").sentence()).doesNotContain("glaze");
  }

  @Test
  void aPieceThatHasAProgramIsNotSaidToHaveNoneWhereAnotherOfItsSetHasNone() {
    WeekPlan plan =
        planned(
            onlyGlaze(
                List.of(
                    Weeks.inSet("A", "basin", 2, Stage.GLAZED, "6"),
                    Weeks.inSet("B", "basin", 3, Stage.GLAZED, "04"))));

    assertThat(of(plan, "A").sentence()).contains("of its whole set");
    // The third has no other piece in its set: what is said of it is true of it alone.
    List<String> said = new ArrayList<>();
    plan.waiting().stream()
        .filter(waiting -> waiting.portion().batchId().equals("B"))
        .forEach(waiting -> said.add(waiting.portion().numbers() + " " + waiting.sentence()));
    assertThat(said).hasSize(2);
    assertThat(said.get(0)).startsWith("[3]").contains("its cone and atmosphere");
    assertThat(said.get(1)).startsWith("[1, 2]").contains("of its whole set");
  }

  @Test
  void aLoadThatWasBrokenOffByHandDoesNotSayThatItsWareCannotStand() {
    WeekRequest request =
        onlyGlaze(List.of(Weeks.ware("A", "basin", 1, Stage.GLAZED, "2026-06-05")));
    WeekPlanner[] planner = new WeekPlanner[1];
    LoadSource stopping =
        new LoadSource() {
          @Override
          public Optional<InspectedLoad> plan(LoadRequest load) {
            planner[0].stop();
            return Optional.empty();
          }
        };
    planner[0] = new WeekPlanner(request, stopping);

    WeekPlan plan = planner[0].plan(week -> {});

    assertThat(of(plan, "A").reason()).isEqualTo(Reason.NOT_PLANNED);
  }
}
