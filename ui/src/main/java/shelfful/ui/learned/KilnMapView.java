package shelfful.ui.learned;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import shelfful.learning.CellRate;
import shelfful.learning.Verdict;
import shelfful.record.Ring;
import shelfful.ui.look.Lines;
import shelfful.ware.Zone;

/**
 * The kiln cut in half, from its middle at the left to its wall at the right: thirds of the height
 * and rings of equal area, drawn equally wide so that there is room for their figures. What differs
 * from the rest is told by its word and its strokes, not by colour.
 */
final class KilnMapView extends GridPane {
  private static final List<Zone> FROM_THE_TOP = List.of(Zone.TOP, Zone.MIDDLE, Zone.BOTTOM);
  private static final List<Double> EQUAL_AREAS =
      List.of(1.0, Math.sqrt(2 / 3.0), Math.sqrt(1 / 3.0));
  private static final double SKETCH = 26;

  KilnMapView() {
    getStyleClass().add("kiln-map");
    for (int i = 0; i <= Ring.values().length + 1; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHgrow(Priority.ALWAYS);
      column.setPercentWidth(i == 0 ? 16 : 21);
      getColumnConstraints().add(column);
    }
  }

  /** Shows another look. */
  void show(Learned learned, HabitWords said) {
    getChildren().clear();
    add(sketch(said), 0, 0);
    for (Ring ring : Ring.values()) {
      add(heading(said.words().of("ring", ring)), 1 + ring.ordinal(), 0);
    }
    add(heading(said.words().of("learned.third")), 1 + Ring.values().length, 0);
    int row = 1;
    for (Zone zone : FROM_THE_TOP) {
      add(heading(said.words().of("zone", zone)), 0, row);
      for (Ring ring : Ring.values()) {
        add(cell(learned.at(zone, ring), said, "map-cell"), 1 + ring.ordinal(), row);
      }
      add(cell(learned.at(zone), said, "map-margin"), 1 + Ring.values().length, row);
      row++;
    }
    add(heading(said.words().of("learned.ring")), 0, row);
    for (Ring ring : Ring.values()) {
      add(cell(learned.at(ring), said, "map-margin"), 1 + ring.ordinal(), row);
    }
  }

  private static Label heading(String words) {
    return Lines.of(words, "strong");
  }

  /** The rings from above, as wide as they are. */
  private static StackPane sketch(HabitWords said) {
    StackPane rings = new StackPane();
    for (double share : EQUAL_AREAS) {
      Circle circle = new Circle(SKETCH * share);
      circle.getStyleClass().add("ring");
      rings.getChildren().add(circle);
    }
    rings.setAccessibleText(said.words().of("learned.rings"));
    return rings;
  }

  private static StackPane cell(Optional<CellRate> rate, HabitWords said, String style) {
    VBox figures = new VBox();
    figures.getStyleClass().add("map-figures");
    if (rate.isEmpty()) {
      figures.getChildren().add(Lines.of(said.words().of("learned.never"), "quiet"));
    } else {
      figures.getChildren().addAll(figures(rate.get(), said));
    }
    StackPane cell = new StackPane(figures);
    cell.getStyleClass().addAll(style, rate.map(KilnMapView::strokes).orElse("map-like"));
    return cell;
  }

  private static List<Label> figures(CellRate rate, HabitWords said) {
    Label counts = Lines.of(said.counts(rate), "quiet");
    Label main = Lines.of(said.rate(rate), "strong");
    if (rate.proportion().isTooFew()) {
      return List.of(main, counts);
    }
    Label interval = Lines.of(said.interval(rate));
    return rate.verdict() == Verdict.WORSE || rate.verdict() == Verdict.BETTER
        ? List.of(main, interval, counts, Lines.of(said.verdict(rate), "strong"))
        : List.of(main, interval, counts);
  }

  private static String strokes(CellRate rate) {
    return switch (rate.verdict()) {
      case WORSE -> "map-worse";
      case BETTER -> "map-better";
      case LIKE_THE_REST, TOO_FEW -> "map-like";
    };
  }
}
