package shelfful.ui.look;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A control under the words that say what it is for, which are also read aloud for it. */
public final class Labelled extends VBox {
  public Labelled(String words, Control control) {
    control.setAccessibleText(words);
    control.setMaxWidth(Double.MAX_VALUE);
    Label label = Lines.of(words);
    label.setLabelFor(control);
    getStyleClass().add("field");
    getChildren().addAll(label, control);
  }
}
