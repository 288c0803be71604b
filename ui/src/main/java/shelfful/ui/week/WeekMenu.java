package shelfful.ui.week;

import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import shelfful.ui.look.MenuItems;
import shelfful.ui.words.Words;

/** The menu of the week: everything that can be done, with its keys. */
final class WeekMenu extends MenuBar {
  private final Words words;
  private final MenuItems items;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private final WeekPlaces places;

  WeekMenu(Words words, WeekViewModel model, WeekFileViewModel files, WeekPlaces places) {
    this.words = words;
    this.items = new MenuItems(words);
    this.model = model;
    this.files = files;
    this.places = places;
    getMenus().addAll(week(), edit());
  }

  private Menu week() {
    return new Menu(
        words.of("week.menu"),
        null,
        items.item("week.open", "Shortcut+O", () -> leave(this::open)),
        items.item("week.demo", "Shortcut+D", () -> leave(files::planDemo)),
        new SeparatorMenuItem(),
        needsAWeek(items.item("week.save", "Shortcut+S", this::save)),
        needsAWeek(items.item("week.saveAs", "Shortcut+Shift+S", this::saveAs)),
        needsAWeek(
            items.item(
                "week.saveCalendar",
                "Shortcut+E",
                () -> places.forCalendar().ifPresent(files::saveCalendar))),
        needsAWeek(items.item("week.saveSheets", "Shortcut+P", this::saveSheets)),
        needsAWeek(
            items.item(
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
    WeekSteps steps = model.steps();
    MenuItem undo = items.step("menu.undo", "Shortcut+Z", model::undo, steps.nameOfLast());
    MenuItem redo = items.step("menu.redo", "Shortcut+Shift+Z", model::redo, steps.nameOfNext());
    MenuItem stop = items.item("menu.stop", "Shortcut+Period", model::stop);
    stop.disableProperty().bind(model.planning().not());
    return new Menu(
        words.of("menu.edit"),
        null,
        undo,
        redo,
        new SeparatorMenuItem(),
        needsAWeek(items.item("week.freeze", "Shortcut+L", model::freezeOrRelease)),
        needsAWeek(items.item("week.again", "Shortcut+R", model::planAgain)),
        stop);
  }

  private MenuItem needsAWeek(MenuItem item) {
    item.disableProperty().bind(model.shown().map(shown -> shown.isEmpty()));
    return item;
  }
}
