package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.ui.look.Em;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The middle of the desk: the chosen layer's name, its sheet, and buttons to look about. */
final class SheetPane extends VBox {
  private static final double LEAST_TITLES = 190;

  private final Words words;
  private final DeskViewModel model;
  private final ShelfView sheets;
  private final Label heading = new Label();
  private final Label under = new Label();

  SheetPane(Words words, DeskViewModel model, ShelfView sheets) {
    this.words = words;
    this.model = model;
    this.sheets = sheets;
    getStyleClass().add("sheet-pane");
    heading.getStyleClass().add("heading");
    under.getStyleClass().add("quiet");
    for (Label label : List.of(heading, under)) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    VBox titles = new VBox(heading, under);
    HBox buttons =
        new HBox(
            button("sheet.before", () -> model.chooseLayerAfter(-1)),
            button("sheet.after", () -> model.chooseLayerAfter(1)),
            space(),
            button("sheet.smaller", sheets::zoomOut),
            button("sheet.fit", sheets::fit),
            button("sheet.larger", sheets::zoomIn));
    buttons.getStyleClass().add("sheet-buttons");
    FlowPane bar = new FlowPane(titles, buttons);
    bar.getStyleClass().add("bar");
    bar.setRowValignment(VPos.CENTER);
    titles.prefWidthProperty().bind(widthOf(bar, buttons));
    setVgrow(sheets, Priority.ALWAYS);
    getChildren().addAll(bar, sheets);
  }

  /** The titles push the buttons to the right, or to a line of their own where there is no room. */
  private DoubleBinding widthOf(FlowPane bar, HBox buttons) {
    DoubleBinding least = Em.of(under, LEAST_TITLES);
    return Bindings.createDoubleBinding(
        () -> {
          double sides = bar.snappedLeftInset() + bar.snappedRightInset() + 2;
          double beside = bar.getWidth() - sides - buttons.getWidth();
          return beside >= least.get() ? beside : Math.max(0, bar.getWidth() - sides);
        },
        bar.widthProperty(),
        bar.insetsProperty(),
        buttons.widthProperty(),
        least);
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(words.of(key));
    button.setAccessibleText(words.of(key + "Text"));
    button.setTooltip(new Tooltip(words.of(key + "Text")));
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  private static Region space() {
    Region space = new Region();
    space.setMinWidth(10);
    return space;
  }

  /** Shows the chosen layer as it now is. */
  void refresh() {
    model
        .shown()
        .get()
        .ifPresent(load -> load.layer(model.layerId().get()).ifPresent(one -> show(load, one)));
  }

  private void show(ShownLoad load, LayerList layer) {
    int count = load.lists().layers().size();
    heading.setText(words.of("sheet.heading", layer.layerId(), layer.shelf()));
    under.setText(words.of("sheet.under", layer.clearHeight(), layer.order(), count));
    String told = words.of("sheet.text", layer.layerId(), layer.rows().size());
    sheets.show(load.sheets(layer.layerId()), told);
    pointOut();
  }

  /** Points out the chosen piece. */
  void pointOut() {
    Optional<ShownLoad> load = model.shown().get();
    sheets.pointOut(load.flatMap(one -> one.ring(model.layerId().get(), model.pieceId().get())));
  }
}
