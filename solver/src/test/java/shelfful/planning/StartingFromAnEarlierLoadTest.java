package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Batch;

class StartingFromAnEarlierLoadTest {
  private static final long STEPS = 40;

  private static LoadRequest with(LoadRequest old, Batch more) {
    List<Batch> batches = new ArrayList<>(old.batches());
    batches.add(more);
    return new LoadRequest(
        old.studio(),
        batches,
        old.firing(),
        old.columnPlanId(),
        old.day(),
        old.seed(),
        old.steps());
  }

  private static void isSound(Load load) {
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
  }

  @Test
  void threeMorePiecesMoveATenthOfThemAtMost() {
    Load before = Scene.ofThreeCups().plan(STEPS);
    assertThat(before.placed()).isGreaterThan(100);
    LoadRequest more = with(before.request(), Scene.plain("N", "b", 3));
    List<Load> shown = new ArrayList<>();
    Load after =
        new LoadPlanner(more).startFrom(before, true).plan(SearchBudget.ofSteps(STEPS), shown::add);
    shown.add(after);
    shown.forEach(StartingFromAnEarlierLoadTest::isSound);
    assertThat(after.request()).isEqualTo(more);
    assertThat(after.placed()).isGreaterThanOrEqualTo(before.placed());
    assertThat(new SmallChange(more, before).moved(after))
        .isLessThanOrEqualTo(before.placed() / 10);
  }

  @Test
  void whatIsNotChangedIsNotMovedAtAll() {
    Load before = Scene.ofThreeCups().plan(STEPS);
    Load after =
        new LoadPlanner(before.request())
            .startFrom(before, true)
            .plan(SearchBudget.ofSteps(0), load -> {});
    assertThat(new SmallChange(before.request(), before).moved(after)).isZero();
  }

  @Test
  void beginsNoWorseThanTheEarlierLoad() {
    Load before = Scene.ofThreeCups().plan(STEPS);
    List<Load> shown = new ArrayList<>();
    Load after =
        new LoadPlanner(before.request())
            .startFrom(before, false)
            .plan(SearchBudget.ofSteps(0), shown::add);
    assertThat(shown.get(0).placed()).isGreaterThanOrEqualTo(before.placed());
    isSound(after);
    assertThat(after.placed()).isGreaterThanOrEqualTo(before.placed());
  }

  @Test
  void movingMustBringSomething() {
    Merit steady = new Merit(0, 0, 1000, 4);
    assertThat(SmallChange.isWorth(steady, new Merit(0, 0, 1300, 4), 11)).isTrue();
    assertThat(SmallChange.isWorth(steady, new Merit(0, 0, 1300, 4), 12)).isFalse();
    assertThat(SmallChange.isWorth(steady, new Merit(0, 0, 1000, 3), 0)).isFalse();
    assertThat(SmallChange.isWorth(new Merit(0, 1, 1000, 4), new Merit(0, 0, 900, 4), 90)).isTrue();
    assertThat(SmallChange.isWorth(steady, new Merit(1, 0, 9000, 4), 1)).isFalse();
  }
}
