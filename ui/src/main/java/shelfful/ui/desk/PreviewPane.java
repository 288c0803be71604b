package shelfful.ui.desk;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.LoadDrawing;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The sheets as they are printed, in place of the desk: the same marks that the PDF is made of. */
final class PreviewPane extends VBox {
  private final ShelfView sheets = new ShelfView();

  PreviewPane(Words words, LoadDrawing drawing, Runnable print, Runnable back) {
    getStyleClass().add("sheet-pane");
    Label heading = new Label(words.of("preview.heading", drawing.sheets().size()));
    heading.getStyleClass().add("heading");
    heading.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(heading, Priority.ALWAYS);
    HBox bar =
        new HBox(
            heading,
            button(words.of("sheet.smaller"), words.of("sheet.smallerText"), sheets::zoomOut),
            button(words.of("sheet.fit"), words.of("sheet.fitText"), sheets::fit),
            button(words.of("sheet.larger"), words.of("sheet.largerText"), sheets::zoomIn),
            button(words.of("preview.print"), words.of("preview.printText"), print),
            button(words.of("preview.back"), words.of("preview.backText"), back));
    bar.getStyleClass().add("bar");
    bar.setAlignment(Pos.CENTER_LEFT);
    setVgrow(sheets, Priority.ALWAYS);
    getChildren().addAll(bar, sheets);
    sheets.show(drawing.sheets(), words.of("preview.text", drawing.sheets().size()));
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            back.run();
            event.consume();
          }
        });
  }

  private static Button button(String words, String told, Runnable action) {
    Button button = new Button(words);
    button.setAccessibleText(told);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  /** So that the keys work at once. */
  void takeFocus() {
    sheets.requestFocus();
  }
}
