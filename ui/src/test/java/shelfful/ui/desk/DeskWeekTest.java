package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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
                  new DeskWeek.Around(settings, leaving, owner),
                  firing -> {});
          week.model().begin(SmallWeek.planned());
          return null;
        });
  }

  @AfterEach
  void close() {
    run(owner::close);
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
}
