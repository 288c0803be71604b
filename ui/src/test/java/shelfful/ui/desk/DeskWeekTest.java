package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.WeekRecovery;
import shelfful.ui.Screen;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.week.SmallWeek;
import shelfful.ui.words.Words;

/** An unsaved week is asked about as everything else is before it is left behind. */
class DeskWeekTest {
  private final QueuedTaskRunner tasks = new QueuedTaskRunner();
  private final SetPlaces places = new SetPlaces();
  private final List<String> dropped = new ArrayList<>();
  private final Leaving leaving =
      new Leaving(
          Words.english(),
          places,
          new Leaving.Document("the plan", () -> false, () -> true, () -> dropped.add("the plan")));
  @TempDir private Path folder;

  private Stage owner;
  private DeskWeek week;

  @BeforeEach
  void open() {
    Screen.on(
        () -> {
          owner = new Stage();
          owner.setScene(new Scene(new Pane(), 400, 300));
          owner.show();
          SettingsViewModel settings = SettingsViewModel.of(Settings.usual(Locale.ROOT));
          week =
              new DeskWeek(
                  Words.english(),
                  tasks,
                  new DeskWeek.Around(settings, leaving, recovery(), owner),
                  firing -> {});
          week.model().begin(SmallWeek.planned());
          return null;
        });
  }

  @AfterEach
  void close() {
    run(owner::close);
  }

  private WeekRecovery recovery() {
    return new WeekRecovery(new RecoveryFolder(folder.resolve("recovery")));
  }

  private static void run(Runnable step) {
    Screen.on(
        () -> {
          step.run();
          return null;
        });
  }

  @Test
  void theDeskStaysWithEverythingThatItKeepsWhileTheWeekStays() {
    places.answer = Places.Answer.STAY;
    assertThat(leaving.mayClose()).isFalse();
    assertThat(places.asked).singleElement().asString().contains("the week");
    assertThat(dropped).isEmpty();
  }

  @Test
  void theDemoMonthTakesThePlaceOfAnUnsavedWeekOnlyWhenItMay() {
    places.answer = Places.Answer.STAY;
    run(week::planDemo);
    assertThat(places.asked).singleElement().asString().contains("the week");
    assertThatThrownBy(tasks::doWork).isInstanceOf(NoSuchElementException.class);
    places.answer = Places.Answer.LEAVE;
    run(week::planDemo);
    tasks.doWork();
  }

  @Test
  void aWeekThatWasLeftIsOfferedAndStaysThereUntilItIsAnsweredFor() throws IOException {
    recovery().keep(SmallWeek.planned());
    Path kept = folder.resolve("recovery");
    try (Stream<Path> files = Files.list(kept)) {
      Files.move(files.findFirst().orElseThrow(), kept.resolve("week-2147483646-1.week.json"));
    }
    List<Notice> told = new ArrayList<>();
    run(() -> week.offer(told::add));
    assertThat(told.get(0).heading()).containsPattern("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");
    places.answer = Places.Answer.STAY;
    run(told.get(0).choices().get(0).action());
    assertThat(recovery().left()).as("the unsaved week on the screen stays").hasSize(1);
    places.answer = Places.Answer.LEAVE;
    run(told.get(0).choices().get(0).action());
    assertThat(recovery().left()).isEmpty();
    assertThat(told).hasSize(1);
  }
}
