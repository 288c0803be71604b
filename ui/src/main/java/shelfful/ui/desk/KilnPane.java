package shelfful.ui.desk;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.ui.kilnview.KilnView;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The kiln from one side under its heading, with the side it is seen from. */
final class KilnPane extends VBox {
  private final Label heading;
  private final Label seen = Lines.of("", "quiet");
  private final KilnView kiln;

  KilnPane(Words words, KilnView kiln) {
    this.kiln = kiln;
    heading = new Label(words.of("kiln.heading"));
    heading.getStyleClass().add("heading");
    kiln.setAccessibleText(words.of("kiln.text"));
    setVgrow(kiln, Priority.ALWAYS);
    getChildren().addAll(heading, seen, kiln);
    getStyleClass().add("side");
    setMinWidth(200);
  }

  Label heading() {
    return heading;
  }

  /** A label with letters of the usual size. */
  Label letters() {
    return seen;
  }

  /** Shows the kiln of a load. */
  void show(ShownLoad load) {
    String side = load.side().seen();
    seen.setText(side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1));
    kiln.show(load.side(), load.lists().layers());
  }

  /** Marks the chosen layer. */
  void mark(String layerId) {
    kiln.mark(layerId);
  }
}
