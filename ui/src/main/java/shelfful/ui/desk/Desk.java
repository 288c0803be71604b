package shelfful.ui.desk;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.OptionalInt;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import shelfful.app.LoadLimit;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.app.WeekRecovery;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsFolder;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.FxTaskRunner;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.week.OpenedFiring;
import shelfful.ui.words.Words;

/** The desk as an application: one window. */
public final class Desk extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 820;

  /** Left for the window's own title bar. */
  private static final double TITLE = 40;

  private static final SearchLength LENGTH = SearchLength.ofTime(Duration.ofSeconds(30));

  private DeskViewModel model;

  @Override
  public void start(Stage stage) {
    SettingsViewModel settings =
        SettingsViewModel.in(SettingsFolder.here(), Settings.usual(Locale.getDefault()));
    Words words = Words.in(settings.settings().get().language());
    RecoveryFolder recovery = RecoveryFolder.usual();
    TaskRunner tasks = new FxTaskRunner();
    model = new DeskViewModel(words, tasks, LENGTH, recovery);
    model.boundedBy(request -> OptionalInt.of(LoadLimit.of(request).pieces()));
    DeskWindow window =
        new DeskWindow(words, model, new AskForFile(words, stage, getHostServices()::showDocument));
    Workshop.Around around = new Workshop.Around(settings, window.leaving(), SettingsFolder.here());
    Workshop workshop = new Workshop(words, model, around, stage);
    Studies studies =
        new Studies(
            words,
            model,
            new Studies.Around(settings, workshop.studio(), tasks, stage, SettingsFolder.here()));
    window.add(workshop.menu());
    window.add(studies.menu());
    window.offerWhy(words.of("studies.why"), studies::showWhy);
    window.offer(words.of("start.paste"), workshop::paste);
    DeskWeek week =
        new DeskWeek(
            words,
            tasks,
            new DeskWeek.Around(settings, window.leaving(), new WeekRecovery(recovery), stage),
            firing -> window.leaving().plan(() -> lookAt(firing, words, stage)));
    window.add(week.menu());
    window.offer(words.of("week.demo"), week::planDemo);
    stage.setOnCloseRequest(
        event -> {
          if (!window.leaving().mayClose()) {
            event.consume();
          }
        });
    Look.follow(window, settings.settings());
    stage.setTitle(words.of("window.title"));
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    stage.setScene(
        new Scene(
            window, Math.min(WIDTH, room.getWidth()), Math.min(HEIGHT, room.getHeight() - TITLE)));
    stage.setMinWidth(860);
    stage.setMinHeight(560);
    // The picture is sometimes lost while another window lies over this one.
    stage.focusedProperty().addListener(changed -> window.requestLayout());
    stage.show();
    window.offer(recovery, () -> week.offer(model::tell));
    window.rehearse();
    getParameters().getRaw().stream().findFirst().map(Path::of).ifPresent(model::open);
  }

  /** Shows the load of a firing of the week. */
  private void lookAt(OpenedFiring firing, Words words, Stage stage) {
    model.lookAt(firing.load(), words.of("state.from", firing.firingId()));
    stage.toFront();
  }

  @Override
  public void stop() {
    model.stop();
  }
}
