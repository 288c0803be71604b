package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.load.LoadRequest;
import shelfful.ui.DemoPlan;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.words.Words;

class MostThatFitsTest {
  @TempDir private Path folder;

  private final QueuedTaskRunner tasks = new QueuedTaskRunner();
  private final List<LoadRequest> asked = new ArrayList<>();
  private final LoadRequest request = DemoPlan.load().load().request();
  private int limit = 99;
  private DeskViewModel desk;

  @BeforeEach
  void open() {
    desk =
        new DeskViewModel(
            Words.english(),
            tasks,
            SearchLength.ofSteps(0),
            new RecoveryFolder(folder.resolve("recovery")));
    desk.boundedBy(
        one -> {
          asked.add(one);
          return OptionalInt.of(limit);
        });
  }

  private void planned() {
    desk.plan(request);
    tasks.doSteps();
    tasks.doWork();
    tasks.doSteps();
    tasks.passTime();
    tasks.doSteps();
  }

  @Test
  void isAskedOnceAPlanIsShownAndNotBefore() {
    desk.plan(request);
    tasks.doSteps();
    assertThat(asked).isEmpty();
    tasks.doWork();
    assertThat(asked).isEmpty();
    tasks.doSteps();
    String before = desk.state().get();
    tasks.passTime();
    tasks.doSteps();
    tasks.doWork();
    tasks.doSteps();
    assertThat(asked).hasSize(1);
    assertThat(before).doesNotContain("no setting");
    assertThat(desk.state().get()).contains("; no setting can hold more than 99; smallest gap");
  }

  @Test
  void isWorkedOutOnceForARequestHoweverOftenItIsPlannedAgain() {
    planned();
    tasks.doWork();
    tasks.doSteps();
    desk.planAgain();
    tasks.doWork();
    tasks.doSteps();
    assertThat(asked).hasSize(1);
    assertThat(desk.state().get()).contains("no setting can hold more than 99");
  }

  @Test
  void fullIsSaidOnlyWhenAsManyAreInAsAnySettingCanHold() {
    limit = DemoPlan.load().load().placed();
    planned();
    tasks.doWork();
    tasks.doSteps();
    assertThat(desk.state().get()).contains("full: no setting can hold more;");
  }

  @Test
  void aLimitThatIsStillWorkedOutIsNotToldOfAnotherList() {
    planned();
    LoadRequest other =
        new LoadRequest(
            request.studio(),
            request.batches().subList(0, 3),
            request.firing(),
            request.columnPlanId(),
            request.day(),
            request.seed(),
            request.steps());
    desk.plan(other);
    tasks.doSteps();
    tasks.doWork();
    tasks.doWork();
    tasks.doWork();
    tasks.doSteps();
    assertThat(desk.state().get()).as("limit, recovery, plan").doesNotContain("no setting");
    tasks.passTime();
    tasks.doSteps();
    tasks.doWork();
    tasks.doSteps();
    assertThat(asked).hasSize(2);
    assertThat(desk.state().get()).contains("no setting can hold more than 99");
  }
}
