package shelfful.ui.look;

import static javafx.scene.layout.Region.USE_PREF_SIZE;

import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Label;

/** Lines of words that take as many rows as they need. */
public final class Lines {
  private Lines() {}

  /** A line that is broken rather than cut. */
  public static Label of(String words, String... styles) {
    Label line = new Label(words);
    line.getStyleClass().addAll(styles);
    line.setWrapText(true);
    line.setMinHeight(USE_PREF_SIZE);
    return line;
  }

  /** The same, over the whole width, only while something holds; else it takes no room. */
  public static Label during(ObservableBooleanValue holds, String words, String... styles) {
    Label line = of(words, styles);
    line.setMaxWidth(Double.MAX_VALUE);
    line.visibleProperty().bind(holds);
    line.managedProperty().bind(holds);
    return line;
  }

  /** The same following what is said; without words it takes no room. */
  public static Label following(ObservableStringValue said, String... styles) {
    Label line = of("", styles);
    line.textProperty().bind(said);
    line.visibleProperty().bind(line.textProperty().isNotEmpty());
    line.managedProperty().bind(line.visibleProperty());
    line.setMaxWidth(Double.MAX_VALUE);
    return line;
  }
}
