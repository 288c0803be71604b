package shelfful.ui.week;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import shelfful.ui.words.Words;

/** The menu of the week: everything that can be done, with its keys. */
final class WeekMenu extends MenuBar {
  private final Words words;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private final WeekPlaces places;

  WeekMenu(Words words, WeekViewModel model, WeekFileViewModel files, WeekPlaces places) {
    this.words = words;
    this.model = model;
    this.files = files;
    this.places = places;
    getMenus().addAll(week(), edit());
  }

  private Menu week() {
    return new Menu(
        words.of("week.menu"),
        null,
        item("week.open", "Shortcut+O", () -> leave(this::open)),
        item("week.demo", "Shortcut+D", () -> leave(files::planDemo)),
        new SeparatorMenuItem(),
        needsAWeek(item("week.save", "Shortcut+S", this::save)),
        needsAWeek(item("week.saveAs", "Shortcut+Shift+S", this::saveAs)),
        needsAWeek(
            item(
                "week.saveCalendar",
                "Shortcut+E",
                () -> places.forCalendar().ifPresent(files::saveCalendar))),
        needsAWeek(item("week.saveSheets", "Shortcut+P", this::saveSheets)),
        needsAWeek(
            item(
                "week.saveAllSheets",
                "Shortcut+Shift+P",
                () -> places.forAllSheets().ifPresent(files::saveAllSheets))));
  }

  /** Does what puts another week in the place of this one, unless that stays. */
  private void leave(Runnable next) {
    if (places.mayLeave()) {
      next.run();
    }
  }

  private void open() {
    places.toOpen().ifPresent(files::open);
  }

  private void save() {
    files.file().ifPresentOrElse(files::save, this::saveAs);
  }

  private void saveAs() {
    places.forWeek().ifPresent(files::save);
  }

  private void saveSheets() {
    OpenedFiring.of(model)
        .flatMap(firing -> places.forSheets(firing.firingId()))
        .ifPresent(files::saveSheets);
  }

  private Menu edit() {
    MenuItem undo = item("menu.undo", "Shortcut+Z", model::undo);
    MenuItem redo = item("menu.redo", "Shortcut+Shift+Z", model::redo);
    named(undo, "menu.undo", model.steps().nameOfLast());
    named(redo, "menu.redo", model.steps().nameOfNext());
    MenuItem stop = item("menu.stop", "Shortcut+Period", model::stop);
    stop.disableProperty().bind(model.planning().not());
    return new Menu(
        words.of("menu.edit"),
        null,
        undo,
        redo,
        new SeparatorMenuItem(),
        needsAWeek(item("week.freeze", "Shortcut+L", model::freezeOrRelease)),
        needsAWeek(item("week.again", "Shortcut+R", model::planAgain)),
        stop);
  }

  /** Says which step it is, and rests while there is none. */
  private void named(MenuItem item, String key, ObservableValue<String> step) {
    item.disableProperty().bind(step.map(String::isEmpty));
    item.textProperty().bind(step.map(name -> (words.of(key) + " " + name).strip()));
  }

  private MenuItem needsAWeek(MenuItem item) {
    item.disableProperty().bind(model.shown().map(shown -> shown.isEmpty()));
    return item;
  }

  private MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }
}
