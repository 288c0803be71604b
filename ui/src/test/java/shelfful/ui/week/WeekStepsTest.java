package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.app.AlterAWeek;
import shelfful.review.InspectedWeek;
import shelfful.week.Hold;

class WeekStepsTest {
  private final WeekSteps steps = new WeekSteps();
  private final InspectedWeek first = SmallWeek.planned();
  private final InspectedWeek second = held(0);
  private final InspectedWeek third = held(1);

  private static InspectedWeek held(int firing) {
    String id = SmallWeek.planned().plan().firings().get(firing).id();
    return AlterAWeek.hold(SmallWeek.planned().plan(), id, Hold.TIME).orElseThrow();
  }

  @Test
  void aStepThatGrowsBetterIsStillOneStep() {
    steps.begin(first);
    steps.note("moved", second);
    steps.better(third);
    assertThat(steps.now().get()).containsSame(third);
    assertThat(steps.undo()).isTrue();
    assertThat(steps.now().get()).containsSame(first);
    assertThat(steps.undo()).isFalse();
    assertThat(steps.redo()).isTrue();
    assertThat(steps.now().get()).containsSame(third);
  }

  @Test
  void theFirstWeekGrowsBetterWithoutBeingAStep() {
    steps.begin(first);
    steps.better(second);
    assertThat(steps.now().get()).containsSame(second);
    assertThat(steps.undo()).isFalse();
  }

  @Test
  void aNewStepForgetsWhatWasTakenBack() {
    steps.begin(first);
    steps.note("one", second);
    steps.undo();
    assertThat(steps.nameOfNext().get()).isEqualTo("one");
    steps.note("other", third);
    assertThat(steps.nameOfNext().get()).isEmpty();
    assertThat(steps.redo()).isFalse();
    assertThat(steps.nameOfLast().get()).isEqualTo("other");
  }

  @Test
  void anotherWeekTakesTheStepsWithIt() {
    steps.begin(first);
    steps.note("one", second);
    steps.begin(third);
    assertThat(steps.undo()).isFalse();
    assertThat(steps.now().get()).isEqualTo(Optional.of(third));
  }
}
