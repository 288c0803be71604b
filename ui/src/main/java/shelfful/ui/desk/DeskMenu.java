package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
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

  DeskMenu(
      Words words, DeskViewModel model, ShelfView sheets, Supplier<Optional<Path>> askForPlan) {
    this.words = words;
    MenuItem stop = item("menu.stop", "Shortcut+Period", model::stop);
    stop.disableProperty().bind(model.planning().not());
    Menu load =
        new Menu(
            words.of("menu.load"),
            null,
            item("menu.open", "Shortcut+O", () -> askForPlan.get().ifPresent(model::open)),
            item("menu.demo", "Shortcut+D", model::tryTheDemo),
            stop,
            new SeparatorMenuItem(),
            item("menu.quit", "Shortcut+Q", this::askToClose));
    Menu view =
        new Menu(
            words.of("menu.view"),
            null,
            item("menu.zoomIn", "Shortcut+Plus", sheets::zoomIn),
            item("menu.zoomOut", "Shortcut+Minus", sheets::zoomOut),
            item("menu.fit", "Shortcut+0", sheets::fit),
            new SeparatorMenuItem(),
            item("menu.upper", "Shortcut+Up", () -> model.chooseLayerAfter(1)),
            item("menu.lower", "Shortcut+Down", () -> model.chooseLayerAfter(-1)));
    getMenus().addAll(load, view);
  }

  /** As when the window is closed by its own button, so that it may ask first. */
  private void askToClose() {
    Window window = getScene().getWindow();
    WindowEvent asked = new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST);
    window.fireEvent(asked);
  }

  private MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }
}
