package shelfful.ui.desk;

import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import shelfful.ui.look.MenuItems;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

/** The menu: everything that can be done, with its keys. */
final class DeskMenu extends MenuBar {
  private final Words words;
  private final MenuItems items;
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
    this.items = new MenuItems(words);
    this.model = model;
    getMenus().addAll(load(doors), edit(doors.commands()), view(doors.sheets()));
  }

  private Menu load(Doors doors) {
    MenuItem stop = items.item("menu.stop", "Shortcut+Period", model::stop);
    stop.disableProperty().bind(model.planning().not());
    return new Menu(
        words.of("menu.load"),
        null,
        items.item(
            "menu.open", "Shortcut+O", () -> doors.leaving().toOpen().ifPresent(model::open)),
        items.item("menu.demo", "Shortcut+D", () -> doors.leaving().plan(model::tryTheDemo)),
        new SeparatorMenuItem(),
        needsAPlan(items.item("menu.again", "Shortcut+R", model::planAgain)),
        needsAPlan(items.item("menu.fillUp", "Shortcut+Shift+R", model::fillUp)),
        stop,
        new SeparatorMenuItem(),
        needsAPlan(items.item("menu.save", "Shortcut+S", doors.saving()::save)),
        needsAPlan(items.item("menu.saveAs", "Shortcut+Shift+S", doors.saving()::saveAs)),
        needsAPlan(items.item("menu.savePlan", "Shortcut+E", doors.saving()::savePlan)),
        needsAPlan(items.item("menu.preview", "Shortcut+Shift+P", doors.preview())),
        needsAPlan(items.item("menu.print", "Shortcut+P", doors.saving()::print)),
        new SeparatorMenuItem(),
        items.item("menu.quit", "Shortcut+Q", this::askToClose));
  }

  /** As when the window is closed by its own button, so that it may ask first. */
  private void askToClose() {
    Window window = getScene().getWindow();
    WindowEvent asked = new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST);
    window.fireEvent(asked);
  }

  private Menu edit(DeskCommands commands) {
    Steps steps = model.steps();
    MenuItem undo = items.step("menu.undo", "Shortcut+Z", commands::undo, steps.nameOfLast());
    MenuItem redo = items.step("menu.redo", "Shortcut+Shift+Z", commands::redo, steps.nameOfNext());
    return new Menu(
        words.of("menu.edit"),
        null,
        undo,
        redo,
        new SeparatorMenuItem(),
        needsAPlan(items.item("menu.takeUp", "Shortcut+T", commands::takeUpOrSetDown)),
        needsAPlan(items.item("menu.putIn", "Shortcut+I", commands::putIn)),
        needsAPlan(items.item("menu.takeOut", "Shortcut+BackSpace", commands::takeOut)),
        needsAPlan(items.item("menu.pin", "Shortcut+J", commands::pin)),
        needsAPlan(items.item("menu.unpinAll", "Shortcut+Shift+J", commands::unpinAll)),
        needsAPlan(items.item("menu.lock", "Shortcut+L", commands::lock)),
        needsAPlan(items.item("menu.lockKiln", "Shortcut+Shift+L", commands::lockKiln)));
  }

  private Menu view(ShelfView sheets) {
    return new Menu(
        words.of("menu.view"),
        null,
        items.item("menu.zoomIn", "Shortcut+Plus", sheets::zoomIn),
        items.item("menu.zoomOut", "Shortcut+Minus", sheets::zoomOut),
        items.item("menu.fit", "Shortcut+0", sheets::fit),
        new SeparatorMenuItem(),
        items.item("menu.upper", "Shortcut+Up", () -> model.chooseLayerAfter(1)),
        items.item("menu.lower", "Shortcut+Down", () -> model.chooseLayerAfter(-1)));
  }

  private MenuItem needsAPlan(MenuItem item) {
    item.setDisable(true);
    model.shown().addListener((property, was, is) -> item.setDisable(is.isEmpty()));
    return item;
  }
}
