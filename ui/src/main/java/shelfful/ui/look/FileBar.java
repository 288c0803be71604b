package shelfful.ui.look;

import static javafx.scene.layout.Region.USE_PREF_SIZE;

import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import shelfful.ui.words.Words;

/** The buttons over a file that is edited, and the word that it has changes not saved yet. */
public final class FileBar extends FlowPane {
  private final Words words;

  /** An empty row. */
  public FileBar(Words words) {
    this.words = words;
    getStyleClass().addAll("tool-bar-row", "buttons");
    setHgap(8);
    setVgap(6);
  }

  /** Adds a button; returns the row. */
  public FileBar with(String key, Runnable action) {
    return with(button(words, key, action));
  }

  /** Adds a button that says what it is about when it is asked, and rests while it has nothing. */
  public FileBar with(String key, Runnable action, ObservableValue<String> about) {
    Button button = button(words, key, action);
    button.disableProperty().bind(about.map(String::isEmpty));
    button.accessibleTextProperty().bind(about.map(one -> (words.of(key) + " " + one).strip()));
    Tooltip tip = new Tooltip();
    tip.textProperty().bind(about);
    button.setTooltip(tip);
    return with(button);
  }

  /** Adds a button that was made before; returns the row. */
  public FileBar with(Button button) {
    getChildren().add(button);
    return this;
  }

  /** Ends the row with a word that is there only while something is not saved. */
  public FileBar ending(String key, ObservableBooleanValue unsaved) {
    Label label = new Label(words.of(key));
    label.visibleProperty().bind(unsaved);
    label.managedProperty().bind(unsaved);
    label.getStyleClass().add("quiet");
    getChildren().add(label);
    return this;
  }

  /** A button as wide as its words. */
  public static Button button(Words words, String key, Runnable action) {
    Button button = new Button(words.of(key));
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }
}
