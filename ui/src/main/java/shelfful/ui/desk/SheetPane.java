package shelfful.ui.desk;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The middle of the desk: the chosen layer's name, its sheet, and buttons to look about. */
final class SheetPane extends VBox {
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
    VBox titles = new VBox(heading, under);
    titles.setMinWidth(0);
    HBox.setHgrow(titles, Priority.ALWAYS);
    HBox bar =
        new HBox(
            titles,
            button("sheet.before", () -> model.chooseLayerAfter(-1)),
            button("sheet.after", () -> model.chooseLayerAfter(1)),
            space(),
            button("sheet.smaller", sheets::zoomOut),
            button("sheet.fit", sheets::fit),
            button("sheet.larger", sheets::zoomIn));
    bar.getStyleClass().add("bar");
    bar.setAlignment(Pos.CENTER_LEFT);
    setVgrow(sheets, Priority.ALWAYS);
    getChildren().addAll(bar, sheets);
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
