package shelfful.ui.week;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import shelfful.drawing.Printing;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/** The window of the week, opened from the desk and closed with it. */
public final class WeekWindow {
  private static final double WIDTH = 1200;
  private static final double HEIGHT = 800;
  private static final Duration LENGTH = Duration.ofSeconds(30);

  private final Words words;
  private final SettingsViewModel settings;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private final Stage stage = new Stage();
  private final WeekPane pane;

  /**
   * Not shown yet.
   *
   * @param owner the desk's own window, with which it is closed; not its owner, so that either may
   *     lie over the other
   * @param desk is given firings to show
   */
  public WeekWindow(
      Words words,
      TaskRunner tasks,
      SettingsViewModel settings,
      Stage owner,
      Consumer<OpenedFiring> desk) {
    this.words = words;
    this.settings = settings;
    model = new WeekViewModel(words, tasks, Optional.of(LENGTH));
    files = new WeekFileViewModel(words, tasks, model, this::printing);
    owner.addEventHandler(WindowEvent.WINDOW_HIDDEN, hidden -> close());
    pane = new WeekPane(words, model, files, new AskForWeekFile(words, stage, desk));
    Look.follow(pane, settings.settings());
    stage.setTitle(words.of("week.window"));
    stage.setScene(new Scene(pane, WIDTH, HEIGHT));
    stage.setMinWidth(760);
    stage.setMinHeight(520);
  }

  private Printing printing() {
    Settings now = settings.settings().get();
    return Printing.plain(now.paper(), now.unit());
  }

  /** The menu of the desk that opens it. */
  public Menu menu() {
    return new Menu(
        words.of("week.menu"),
        null,
        item("week.show", this::show),
        item("week.demo", this::planDemo));
  }

  private MenuItem item(String key, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setOnAction(event -> action.run());
    return item;
  }

  private void show() {
    stage.show();
    stage.toFront();
    pane.calendar().requestFocus();
  }

  /** Shows the window and plans the month that comes with the program. */
  public void planDemo() {
    show();
    files.planDemo();
  }

  /** Asks before a week that no file holds is lost; true when it may be. */
  public boolean mayClose() {
    if (!files.unsaved().get()) {
      return true;
    }
    ButtonType stay = new ButtonType(words.of("week.stay"), ButtonBar.ButtonData.CANCEL_CLOSE);
    ButtonType leave = new ButtonType(words.of("week.leave"), ButtonBar.ButtonData.OK_DONE);
    Alert question = new Alert(Alert.AlertType.NONE, words.of("week.unsaved"), leave, stay);
    question.setTitle(words.of("week.window"));
    Look.dress(question.getDialogPane(), settings.settings().get());
    return question.showAndWait().filter(answer -> answer == leave).isPresent();
  }

  private void close() {
    model.stop();
    stage.close();
  }
}
