package shelfful.ui.batches;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TablePosition;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import shelfful.app.BatchLines;
import shelfful.ui.look.Em;

/** The list as a table; every cell can be edited in its place. */
final class BatchTable extends TableView<BatchLines.Line> {
  private static final Map<String, Double> WIDE =
      Map.of("form", 150.0, "glaze", 140.0, "due", 100.0, "order", 100.0, "set", 110.0);
  private static final double USUAL = 80;
  private static final double NUMBER = 56;

  /** A wide letter of a heading, and the room beside it, in pixels at 100 %. */
  private static final double LETTER = 8;

  private static final double SIDES = 24;

  BatchTable(BatchListViewModel model, Label measure) {
    setItems(model.lines());
    setEditable(true);
    setAccessibleText(model.words().of("batches.table"));
    setPlaceholder(new Label(model.words().of("batches.empty")));
    getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    getSelectionModel().setCellSelectionEnabled(true);
    getColumns().add(number(model, measure));
    List<String> headings = BatchLines.headings();
    for (int i = 0; i < headings.size(); i++) {
      getColumns().add(column(model, i, measure));
    }
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private static TableColumn<BatchLines.Line, String> number(
      BatchListViewModel model, Label measure) {
    TableColumn<BatchLines.Line, String> column =
        new TableColumn<>(model.words().of("batches.row"));
    column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(""));
    column.setCellFactory(view -> new NumberCell());
    double named = column.getText().length() * LETTER + SIDES;
    column.prefWidthProperty().bind(Em.of(measure, Math.max(named, NUMBER)));
    column.setEditable(false);
    column.setSortable(false);
    column.setReorderable(false);
    return column;
  }

  private static TableColumn<BatchLines.Line, String> column(
      BatchListViewModel model, int index, Label measure) {
    String heading = BatchLines.headings().get(index);
    TableColumn<BatchLines.Line, String> column =
        new TableColumn<>(model.words().of("column." + heading));
    column.setId(heading);
    column.setCellValueFactory(
        cell -> new ReadOnlyStringWrapper(cell.getValue().cells().get(index)));
    column.setCellFactory(view -> new EditCell(model, heading));
    double named = column.getText().length() * LETTER + SIDES;
    column
        .prefWidthProperty()
        .bind(Em.of(measure, Math.max(named, WIDE.getOrDefault(heading, USUAL))));
    column.setSortable(false);
    column.setReorderable(false);
    return column;
  }

  /** A letter typed on a chosen cell begins to write it anew. */
  private void typed(KeyEvent event) {
    String letter = event.getCharacter();
    if (getEditingCell() != null
        || event.isShortcutDown()
        || event.isAltDown()
        || letter.isBlank()
        || letter.chars().anyMatch(Character::isISOControl)) {
      return;
    }
    TablePosition<?, ?> focused = getFocusModel().getFocusedCell();
    if (focused.getRow() >= 0 && focused.getTableColumn() != null) {
      edit(focused.getRow(), getVisibleLeafColumn(focused.getColumn()));
      if (lookup(".text-field") instanceof TextField field) {
        field.setText(letter);
        field.end();
      }
      event.consume();
    }
  }

  /** The rows in which a cell is chosen, from 0. */
  List<Integer> chosenRows() {
    Set<Integer> rows = new TreeSet<>();
    getSelectionModel().getSelectedCells().forEach(cell -> rows.add(cell.getRow()));
    return List.copyOf(rows);
  }

  /** Begins to edit the first cell that a new row needs. */
  void begin(int row) {
    TableColumn<BatchLines.Line, ?> form = getVisibleLeafColumn(2);
    requestFocus();
    scrollTo(row);
    layout();
    getSelectionModel().clearAndSelect(row, form);
    edit(row, form);
  }

  static boolean isDelete(KeyEvent event) {
    return event.getCode() == KeyCode.DELETE;
  }

  private static final class NumberCell extends TableCell<BatchLines.Line, String> {
    @Override
    protected void updateItem(String text, boolean empty) {
      super.updateItem(text, empty);
      setText(empty ? null : Integer.toString(getIndex() + 1));
    }
  }
}
