package shelfful.ui.lists;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ui.words.Words;

/** What stands on the chosen layer, a row for each piece, numbered as on its sheet. */
public final class PieceTable extends VBox {
  private static final double NUMBER = 42;
  private static final double PIECE = 200;
  private static final double PLACE = 106;
  private static final double ROW = 40;

  private final Words words;
  private final Label heading = new Label();
  private final Label explained = new Label();
  private final TableView<LayerList.Row> table = new TableView<>();

  /**
   * Shows nothing yet.
   *
   * @param choose is told the row that is chosen, or that none is
   */
  public PieceTable(Words words, Consumer<Optional<LayerList.Row>> choose) {
    this.words = words;
    getStyleClass().add("piece-table");
    heading.getStyleClass().add("heading");
    heading.setLabelFor(table);
    explained.getStyleClass().add("quiet");
    explained.setWrapText(true);
    explained.setMinHeight(USE_PREF_SIZE);
    table
        .getColumns()
        .add(
            column(
                words.of("in.number"), NUMBER, row -> Integer.toString(row.number()), row -> ""));
    table
        .getColumns()
        .add(column(words.of("in.piece"), PIECE, LayerList.Row::form, LayerList.Row::glaze));
    table
        .getColumns()
        .add(column(words.of("in.place"), PLACE, LayerList.Row::place, LayerList.Row::pointing));
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_NEXT_COLUMN);
    table.setFixedCellSize(ROW);
    table.setPlaceholder(new Label(words.of("in.empty")));
    table.setRowFactory(view -> row());
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((property, was, is) -> choose.accept(Optional.ofNullable(is)));
    setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(heading, explained, table);
  }

  private static TableColumn<LayerList.Row, LayerList.Row> column(
      String title,
      double width,
      Function<LayerList.Row, String> first,
      Function<LayerList.Row, String> second) {
    TableColumn<LayerList.Row, LayerList.Row> column = new TableColumn<>(title);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
    column.setCellFactory(view -> new TwoLineCell<>(first, second));
    column.setPrefWidth(width);
    column.setMinWidth(Math.min(width, PLACE));
    column.setSortable(false);
    column.setReorderable(false);
    return column;
  }

  private TableRow<LayerList.Row> row() {
    return new TableRow<>() {
      @Override
      protected void updateItem(LayerList.Row row, boolean empty) {
        super.updateItem(row, empty);
        setAccessibleText(empty ? null : told(row));
      }
    };
  }

  private String told(LayerList.Row row) {
    String told = words.of("in.row", row.number(), row.form(), row.glaze(), row.place());
    return row.pointing().isEmpty() ? told : told + words.of("in.rowPointing", row.pointing());
  }

  /**
   * Lays out a row that says nothing, so that the first real ones need not wait for all that a row
   * takes to be made ready.
   */
  public void rehearse() {
    Length none = Length.ZERO;
    table.getItems().setAll(new LayerList.Row(0, "", "–", "–", "–", "–", Point.ORIGIN, none));
  }

  /** Shows another layer. */
  public void show(LayerList layer) {
    heading.setText(words.of("in.heading", layer.layerId()));
    explained.setText(words.of("in.placeText", layer.explained()));
    table.setAccessibleText(words.of("in.text", layer.layerId()));
    table.getItems().setAll(layer.rows());
  }

  /** Marks a piece as the chosen one, or none. */
  public void mark(String pieceId) {
    Optional<LayerList.Row> row =
        table.getItems().stream().filter(one -> one.pieceId().equals(pieceId)).findFirst();
    row.filter(one -> !one.equals(table.getSelectionModel().getSelectedItem()))
        .ifPresent(
            one -> {
              table.getSelectionModel().select(one);
              table.scrollTo(one);
            });
    if (row.isEmpty()) {
      table.getSelectionModel().clearSelection();
    }
  }
}
