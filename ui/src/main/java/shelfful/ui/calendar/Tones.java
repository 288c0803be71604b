package shelfful.ui.calendar;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;

/**
 * Reads the colours and the size of letters of the look. A canvas is not reached by stylesheets, so
 * each colour is that of a label without words.
 */
final class Tones {
  private final Map<Tone, Label> labels = new EnumMap<>(Tone.class);

  /** Asks for a repaint whenever the look changes. */
  Tones(Runnable repaint) {
    for (Tone tone : Tone.values()) {
      Label label = new Label();
      label.getStyleClass().add(tone.style());
      label.setManaged(false);
      label.setMouseTransparent(true);
      label.textFillProperty().addListener(changed -> repaint.run());
      label.fontProperty().addListener(changed -> repaint.run());
      labels.put(tone, label);
    }
  }

  /** To be put into the drawing, so that the look reaches them. */
  List<Label> labels() {
    return List.copyOf(labels.values());
  }

  Color of(Tone tone) {
    Paint fill = labels.get(tone).getTextFill();
    return fill instanceof Color colour ? colour : Color.BLACK;
  }

  double em() {
    return labels.get(Tone.INK).getFont().getSize();
  }

  String family() {
    return labels.get(Tone.INK).getFont().getFamily();
  }
}
