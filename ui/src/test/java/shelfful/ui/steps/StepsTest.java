package shelfful.ui.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StepsTest {
  private final Steps steps = new Steps();
  private final List<Integer> values = new ArrayList<>(List.of(0, 0, 0));

  private void put(int where, int value) {
    int before = values.get(where);
    values.set(where, value);
    steps.note(
        new Steps.Step(
            "place " + where,
            before + " to " + value,
            () -> values.set(where, before),
            () -> values.set(where, value)));
  }

  @Test
  void theLastThingDoneAnywhereIsTakenBackFirst() {
    put(0, 1);
    put(2, 5);
    put(0, 2);
    assertThat(steps.nameOfLast().getValue()).isEqualTo("1 to 2");
    steps.undo();
    assertThat(values).containsExactly(1, 0, 5);
    steps.undo();
    assertThat(values).containsExactly(1, 0, 0);
    assertThat(steps.nameOfNext().getValue()).isEqualTo("0 to 5");
    steps.redo();
    steps.redo();
    assertThat(values).containsExactly(2, 0, 5);
    assertThat(steps.redo()).isEmpty();
  }

  @Test
  void aNewStepForgetsWhatWasTakenBackElsewhereToo() {
    put(0, 1);
    put(1, 1);
    steps.undo();
    put(2, 9);
    assertThat(steps.redo()).isEmpty();
    assertThat(steps.nameOfNext().getValue()).isEmpty();
    steps.undo();
    steps.undo();
    assertThat(values).containsExactly(0, 0, 0);
    assertThat(steps.undo()).isEmpty();
  }

  @Test
  void whatWasDoneToOneThingIsForgottenWithIt() {
    String studio = "studio";
    steps.note(new Steps.Step(studio, "a", () -> {}, () -> {}));
    put(0, 1);
    steps.note(new Steps.Step(studio, "b", () -> {}, () -> {}));
    steps.undo();
    steps.forget(studio);
    assertThat(steps.done()).extracting(Steps.Step::name).containsExactly("0 to 1");
    assertThat(steps.lastUndone().get()).isEmpty();
  }

  @Test
  void aStepMayBeNotedJustBeforeOneIsTakenBack() {
    put(0, 1);
    steps.beforeTurning(
        () -> {
          steps.beforeTurning(() -> {});
          put(1, 7);
        });
    steps.undo();
    assertThat(values).containsExactly(1, 0, 0);
  }

  @Test
  void tenThousandRandomStepsTakenBackLeadToTheBeginningAndForthToTheEnd() {
    SplittableRandom random = new SplittableRandom(20260601);
    int noted = 0;
    while (noted < 10_000) {
      int dice = random.nextInt(10);
      if (dice == 0) {
        steps.undo();
      } else if (dice == 1) {
        steps.redo();
      } else {
        put(random.nextInt(3), random.nextInt(1000));
        noted++;
      }
    }
    put(0, 1001);
    List<Integer> last = List.copyOf(values);
    int back = 0;
    while (steps.undo().isPresent()) {
      back++;
    }
    assertThat(values).containsExactly(0, 0, 0);
    assertThat(back).isGreaterThan(5000);
    for (int i = 0; i < back; i++) {
      steps.redo();
    }
    assertThat(values).isEqualTo(last);
    assertThat(steps.redo()).isEmpty();
  }
}
