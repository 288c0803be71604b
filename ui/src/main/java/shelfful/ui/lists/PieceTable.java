package shelfful.ui.lists;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
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
import shelfful.ui.look.Em;
import shelfful.ui.words.Words;

/** What stands on the chosen layer, a row for each piece, numbered as on its sheet. */
public final class PieceTable extends VBox {
  private static final double NUMBER = 48;
  private static final double PIECE = 178;
  private static final double PLACE = 112;
  private static final double ROW = 40;

  /** A wide letter of a heading, in pixels at 100 %. */
  private static final double LETTER = 9;

  /** The scroll bar and the table's edges. */
  private static final double BAR = 20;

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
    addColumns();
    table.fixedCellSizeProperty().bind(Em.of(explained, ROW));
    table.setPlaceholder(new Label(words.of("in.empty")));
    table.setRowFactory(view -> row());
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((property, was, is) -> choose.accept(Optional.ofNullable(is)));
    setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(heading, explained, table);
  }

  /** Columns as wide as their words at any size of letters; what is left goes to the middle one. */
  private void addColumns() {
    var number = column("in.number", row -> Integer.toString(row.number()), row -> "");
    var piece = column("in.piece", LayerList.Row::form, LayerList.Row::glaze);
    var place = column("in.place", LayerList.Row::place, LayerList.Row::pointing);
    double named = number.getText().length() * LETTER + BAR;
    number.prefWidthProperty().bind(Em.of(explained, Math.max(named, NUMBER)));
    place.prefWidthProperty().bind(Em.of(explained, PLACE));
    DoubleBinding left =
        table
            .widthProperty()
            .subtract(number.widthProperty())
            .subtract(place.widthProperty())
            .subtract(BAR);
    piece.prefWidthProperty().bind(Bindings.max(Em.of(explained, PIECE), left));
    table.getColumns().add(number);
    table.getColumns().add(piece);
    table.getColumns().add(place);
  }

  private TableColumn<LayerList.Row, LayerList.Row> column(
      String title, Function<LayerList.Row, String> first, Function<LayerList.Row, String> second) {
    TableColumn<LayerList.Row, LayerList.Row> column = new TableColumn<>(words.of(title));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
    column.setCellFactory(view -> new TwoLineCell<>(first, second));
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
    String pointing = row.pointing().isEmpty() ? "" : words.of("in.rowPointing", row.pointing());
    String upwards =
        row.upwards().stream().map(one -> ". " + one.told()).collect(Collectors.joining());
    return told + pointing + upwards;
  }

  /**
   * Lays out a row that says nothing, so that the first real ones need not wait for all that a row
   * takes to be made ready.
   */
  public void rehearse() {
    Length none = Length.ZERO;
    table
        .getItems()
        .setAll(new LayerList.Row(0, "", "–", "–", "–", "–", Point.ORIGIN, none, List.of()));
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
        table.getItems().stream().filter(one -> one.holds(pieceId)).findFirst();
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
