package shelfful.ui.week;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Scene;
import javafx.scene.control.Menu;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import shelfful.ui.look.Look;
import shelfful.ui.look.MenuItems;
import shelfful.ui.look.Settings;
import shelfful.ui.words.Words;

/** The window of the week, opened from the desk and closed with it. */
public final class WeekWindow {
  private static final double WIDTH = 1200;
  private static final double HEIGHT = 800;

  private final Words words;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private final Stage stage = new Stage();
  private final WeekPlaces places;
  private final WeekPane pane;

  /**
   * What the window asks of the program.
   *
   * @param desk is given firings to show
   * @param mayLeave whether the week may give way to another, asked where no file holds it
   */
  public record Doors(Consumer<OpenedFiring> desk, BooleanSupplier mayLeave) {}

  /** Not shown yet. */
  public WeekWindow(
      Words words,
      WeekViewModel model,
      WeekFileViewModel files,
      ObservableValue<Settings> settings,
      Doors doors) {
    this.words = words;
    this.model = model;
    this.files = files;
    places = new AskForWeekFile(words, stage, doors);
    pane = new WeekPane(words, model, files, places);
    Look.follow(pane, settings);
    stage.setTitle(words.of("week.window"));
    stage.setScene(new Scene(pane, WIDTH, HEIGHT));
    stage.setMinWidth(760);
    stage.setMinHeight(520);
  }

  /** Closes it with the desk's own window; that is not its owner, so that either may lie on top. */
  public void closeWith(Stage desk) {
    desk.addEventHandler(WindowEvent.WINDOW_HIDDEN, hidden -> close());
  }

  /** The menu of the desk that opens it. */
  public Menu menu() {
    MenuItems items = new MenuItems(words);
    return new Menu(
        words.of("week.menu"),
        null,
        items.item("week.show", this::show),
        items.item("week.demo", this::planDemo));
  }

  /** Shows the window in front of the others. */
  public void show() {
    stage.show();
    stage.toFront();
    pane.calendar().requestFocus();
  }

  /** Shows the window and plans the month that comes with the program, unless a week stays. */
  public void planDemo() {
    show();
    if (places.mayLeave()) {
      files.planDemo();
    }
  }

  /** Saves the week in its file, or asks for one; whether a file holds it then. */
  public boolean save() {
    return files.file().or(places::forWeek).filter(files::saveNow).isPresent();
  }

  private void close() {
    model.stop();
    stage.close();
  }
}
