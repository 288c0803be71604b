package shelfful.ui.week;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Lines;
import shelfful.ui.week.ShownWeek.Row;

/** Rows of words, each as high as its words need; choosing one chooses its firing. */
final class RowList extends ListView<Row> {
  private static final double SIDES = 44;

  private boolean marking;

  /**
   * Shows nothing yet.
   *
   * @param text what it is, to be read aloud
   * @param empty what it shows without rows
   * @param choose is told the firing of the row that is chosen
   */
  RowList(String text, String empty, Consumer<String> choose) {
    setAccessibleText(text);
    setPlaceholder(Lines.of(empty));
    setCellFactory(list -> new Cell());
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, was, is) -> {
              if (is != null && !marking && !is.firingId().isEmpty()) {
                choose.accept(is.firingId());
              }
            });
  }

  /** Shows other rows. */
  void show(List<Row> rows) {
    if (!getItems().equals(rows)) {
      marking = true;
      getItems().setAll(rows);
      marking = false;
    }
  }

  /** Marks the first row of a firing, or none. */
  void mark(String firingId) {
    Row chosen = getSelectionModel().getSelectedItem();
    if (chosen != null && chosen.firingId().equals(firingId)) {
      return;
    }
    marking = true;
    getItems().stream()
        .filter(row -> row.firingId().equals(firingId))
        .findFirst()
        .ifPresentOrElse(this::select, () -> getSelectionModel().clearSelection());
    marking = false;
  }

  private void select(Row row) {
    getSelectionModel().select(row);
    scrollTo(Math.max(0, getItems().indexOf(row) - 1));
  }

  private final class Cell extends ListCell<Row> {
    private final Label upper = label("strong");
    private final Label lower = label("quiet");
    private final VBox both = new VBox(upper, lower);

    Cell() {
      setPrefWidth(0);
    }

    private Label label(String style) {
      Label label = Lines.of("", style);
      label.maxWidthProperty().bind(RowList.this.widthProperty().subtract(SIDES));
      return label;
    }

    @Override
    protected void updateItem(Row row, boolean empty) {
      super.updateItem(row, empty);
      boolean blank = empty || row == null;
      setGraphic(blank ? null : both);
      if (!blank) {
        upper.setText(row.first());
        lower.setText(row.second());
        lower.setManaged(!row.second().isEmpty());
        setAccessibleText(row.spoken());
      }
    }
  }
}
