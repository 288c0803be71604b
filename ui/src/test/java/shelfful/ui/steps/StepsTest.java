package shelfful.ui.steps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StepsTest {
  private final Steps<String> steps = new Steps<>();

  private void step(String before, String after) {
    steps.note(new Steps.Step<>(before + after, before, after));
  }

  @Test
  void goesBackAndForthInOrder() {
    step("a", "b");
    step("b", "c");
    assertThat(steps.undo()).map(Steps.Step::before).contains("b");
    assertThat(steps.undo()).map(Steps.Step::before).contains("a");
    assertThat(steps.undo()).isEmpty();
    assertThat(steps.redo()).map(Steps.Step::after).contains("b");
    assertThat(steps.redo()).map(Steps.Step::after).contains("c");
    assertThat(steps.redo()).isEmpty();
  }

  @Test
  void aNewStepForgetsWhatWasTakenBack() {
    step("a", "b");
    steps.undo();
    step("a", "x");
    assertThat(steps.redo()).isEmpty();
    assertThat(steps.undo()).map(Steps.Step::after).contains("x");
  }

  @Test
  void fiveHundredStepsAreKeptAndNoMore() {
    for (int i = 0; i < 600; i++) {
      step("s" + i, "s" + (i + 1));
    }
    int back = 0;
    String reached = "";
    for (var one = steps.undo(); one.isPresent(); one = steps.undo()) {
      reached = one.get().before();
      back++;
    }
    assertThat(back).isEqualTo(500);
    assertThat(reached).isEqualTo("s100");
  }
}
