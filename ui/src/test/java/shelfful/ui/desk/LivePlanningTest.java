package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanListener;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.ui.DemoPlan;
import shelfful.ui.task.QueuedTaskRunner;

class LivePlanningTest {
  private final QueuedTaskRunner tasks = new QueuedTaskRunner();
  private final List<String> told = new ArrayList<>();
  private int stops;

  /** Finds one load and then nothing better until it is stopped. */
  private final class Slow implements Planning {
    @Override
    public Optional<InspectedLoad> run(SearchLength length, PlanListener listener) {
      listener.betweenSteps();
      listener.better(DemoPlan.load());
      return Optional.of(DemoPlan.load());
    }

    @Override
    public void stop() {
      stops++;
    }
  }

  private final class Watching implements LivePlanning.Watcher {
    @Override
    public void better(LivePlanning planning, ShownLoad load) {
      told.add("better");
    }

    @Override
    public void refused(LivePlanning planning) {
      told.add("refused");
    }

    @Override
    public void ended(LivePlanning planning, Optional<ShownLoad> best) {
      told.add("ended");
    }

    @Override
    public void failed(LivePlanning planning, Throwable fault) {
      told.add("failed");
    }
  }

  private LivePlanning started() {
    LivePlanning live =
        new LivePlanning(
            new Slow(),
            tasks,
            new Watching(),
            load -> ShownLoad.of(WorkPlan.of(load.load()), load, Sight.USUAL));
    live.start(SearchLength.ofSteps(1));
    return live;
  }

  private void seconds(int count) {
    for (int i = 0; i < count; i++) {
      tasks.passTime();
      tasks.doSteps();
    }
  }

  @Test
  void endsByItselfWhenNothingBetterWasFoundForTenSeconds() {
    LivePlanning live = started();
    seconds(9);
    assertThat(stops).isZero();
    seconds(1);
    assertThat(stops).isEqualTo(1);
    assertThat(live.hasGivenUp()).isTrue();
    tasks.doWork();
    tasks.doSteps();
    assertThat(told).containsExactly("better", "ended");
  }

  @Test
  void somethingBetterGivesItAnotherTenSeconds() {
    LivePlanning live = started();
    seconds(9);
    live.better(DemoPlan.load());
    tasks.doSteps();
    seconds(9);
    assertThat(stops).isZero();
    seconds(1);
    assertThat(stops).isEqualTo(1);
  }

  @Test
  void betterLoadsAreToldTwiceASecondAtMostAndTheLastOneAlways() {
    LivePlanning live = started();
    live.better(DemoPlan.load());
    tasks.doSteps();
    for (int i = 0; i < 20; i++) {
      live.better(DemoPlan.load());
      tasks.doSteps();
    }
    assertThat(told).as("the first at once").containsExactly("better");
    tasks.passTime();
    tasks.doSteps();
    assertThat(told).containsExactly("better", "better");
    live.better(DemoPlan.load());
    tasks.doSteps();
    assertThat(told).hasSize(2);
  }

  @Test
  void whatHasEndedIsNoLongerLookedAfter() {
    started();
    tasks.doWork();
    tasks.doSteps();
    seconds(20);
    assertThat(stops).isZero();
  }

  @Test
  void planningLetsTheScreenGoFirstBetweenItsSteps() {
    started();
    tasks.doWork();
    assertThat(tasks.waysGiven()).isEqualTo(1);
  }
}
