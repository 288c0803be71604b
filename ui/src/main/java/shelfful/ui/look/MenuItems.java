package shelfful.ui.look;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCombination;
import shelfful.ui.words.Words;

/** Makes the items of menus. */
public record MenuItems(Words words) {

  /** An item that does something. */
  public MenuItem item(String key, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setOnAction(event -> action.run());
    return item;
  }

  /** The same by keys as well, such as {@code Shortcut+S}. */
  public MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = item(key, action);
    item.setAccelerator(KeyCombination.valueOf(keys));
    return item;
  }

  /**
   * The same for a step that is taken back or done again: it says which, and rests while there is
   * none.
   *
   * @param step its name; empty text while there is none
   */
  public MenuItem step(String key, String keys, Runnable action, ObservableValue<String> step) {
    MenuItem item = item(key, keys, action);
    item.disableProperty().bind(step.map(String::isEmpty));
    item.textProperty().bind(step.map(name -> (words.of(key) + " " + name).strip()));
    return item;
  }
}
