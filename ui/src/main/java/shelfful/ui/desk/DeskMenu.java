package shelfful.ui.desk;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The menu: everything that can be done, with its keys. */
final class DeskMenu extends MenuBar {
  private final Words words;
  private final DeskViewModel model;

  /**
   * What the menu reaches.
   *
   * @param leaving asks before the plan on the desk is left behind unsaved
   * @param preview shows the sheets as they are printed
   */
  record Doors(
      DeskCommands commands, Saving saving, Leaving leaving, ShelfView sheets, Runnable preview) {}

  DeskMenu(Words words, DeskViewModel model, Doors doors) {
    this.words = words;
    this.model = model;
    getMenus().addAll(load(doors), edit(doors.commands()), view(doors.sheets()));
  }

  private Menu load(Doors doors) {
    MenuItem stop = item("menu.stop", "Shortcut+Period", model::stop);
    stop.disableProperty().bind(model.planning().not());
    return new Menu(
        words.of("menu.load"),
        null,
        item("menu.open", "Shortcut+O", () -> doors.leaving().toOpen().ifPresent(model::open)),
        item("menu.demo", "Shortcut+D", () -> doors.leaving().plan(model::tryTheDemo)),
        new SeparatorMenuItem(),
        needsAPlan(item("menu.again", "Shortcut+R", model::planAgain)),
        needsAPlan(item("menu.fillUp", "Shortcut+Shift+R", model::fillUp)),
        stop,
        new SeparatorMenuItem(),
        needsAPlan(item("menu.save", "Shortcut+S", doors.saving()::save)),
        needsAPlan(item("menu.saveAs", "Shortcut+Shift+S", doors.saving()::saveAs)),
        needsAPlan(item("menu.savePlan", "Shortcut+E", doors.saving()::savePlan)),
        needsAPlan(item("menu.preview", "Shortcut+Shift+P", doors.preview())),
        needsAPlan(item("menu.print", "Shortcut+P", doors.saving()::print)),
        new SeparatorMenuItem(),
        item("menu.quit", "Shortcut+Q", this::askToClose));
  }

  /** As when the window is closed by its own button, so that it may ask first. */
  private void askToClose() {
    Window window = getScene().getWindow();
    WindowEvent asked = new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST);
    window.fireEvent(asked);
  }

  private Menu edit(DeskCommands commands) {
    MenuItem undo = item("menu.undo", "Shortcut+Z", commands::undo);
    MenuItem redo = item("menu.redo", "Shortcut+Shift+Z", commands::redo);
    named(undo, "menu.undo", model.steps().nameOfLast());
    named(redo, "menu.redo", model.steps().nameOfNext());
    return new Menu(
        words.of("menu.edit"),
        null,
        undo,
        redo,
        new SeparatorMenuItem(),
        needsAPlan(item("menu.takeUp", "Shortcut+T", commands::takeUpOrSetDown)),
        needsAPlan(item("menu.putIn", "Shortcut+I", commands::putIn)),
        needsAPlan(item("menu.takeOut", "Shortcut+BackSpace", commands::takeOut)),
        needsAPlan(item("menu.pin", "Shortcut+J", commands::pin)),
        needsAPlan(item("menu.unpinAll", "Shortcut+Shift+J", commands::unpinAll)),
        needsAPlan(item("menu.lock", "Shortcut+L", commands::lock)),
        needsAPlan(item("menu.lockKiln", "Shortcut+Shift+L", commands::lockKiln)));
  }

  private Menu view(ShelfView sheets) {
    return new Menu(
        words.of("menu.view"),
        null,
        item("menu.zoomIn", "Shortcut+Plus", sheets::zoomIn),
        item("menu.zoomOut", "Shortcut+Minus", sheets::zoomOut),
        item("menu.fit", "Shortcut+0", sheets::fit),
        new SeparatorMenuItem(),
        item("menu.upper", "Shortcut+Up", () -> model.chooseLayerAfter(1)),
        item("menu.lower", "Shortcut+Down", () -> model.chooseLayerAfter(-1)));
  }

  /** Says which step it is, and rests while there is none. */
  private void named(MenuItem item, String key, ObservableValue<String> step) {
    item.disableProperty().bind(step.map(String::isEmpty));
    item.textProperty().bind(step.map(name -> (words.of(key) + " " + name).strip()));
  }

  private MenuItem needsAPlan(MenuItem item) {
    item.setDisable(true);
    model.shown().addListener((property, was, is) -> item.setDisable(is.isEmpty()));
    return item;
  }

  private MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }
}
