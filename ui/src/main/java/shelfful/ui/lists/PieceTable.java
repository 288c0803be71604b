package shelfful.ui.lists;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
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

  /** As many as are in sight at once. */
  private static final int REHEARSED = 16;

  private static final double NEAREST = 70;
  private static final double ROW = 40;

  /** Rows that stay in sight where there is little height. */
  private static final int LEAST_ROWS = 5;

  /** The headings of the columns and the bar under the rows. */
  private static final double HEADINGS = 44;

  /** A wide letter of a heading, in pixels at 100 %. */
  private static final double LETTER = 9;

  /** The scroll bar and the table's edges. */
  private static final double BAR = 20;

  private final Words words;
  private final Label heading = new Label();
  private final Label explained = new Label();
  private final TableView<PieceRow> table = new TableView<>();

  /**
   * Shows nothing yet.
   *
   * @param choose is told the row that is chosen, or that none is
   */
  public PieceTable(Words words, Consumer<Optional<PieceRow>> choose) {
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
    explainBelow(false);
  }

  /** What it is of, in words. */
  public Label heading() {
    return heading;
  }

  /**
   * Explains the places under the table, which keeps some rows in sight, or over it.
   *
   * @param below whether there is little height, and the whole is scrolled
   */
  public void explainBelow(boolean below) {
    getChildren().setAll(heading, below ? table : explained, below ? explained : table);
    if (below) {
      table.minHeightProperty().bind(Em.of(explained, LEAST_ROWS * ROW + HEADINGS));
    } else {
      table.minHeightProperty().unbind();
      table.setMinHeight(USE_COMPUTED_SIZE);
    }
  }

  /** Columns as wide as their words at any size of letters; what is left goes to the middle one. */
  private void addColumns() {
    var number = column("in.number", row -> Integer.toString(row.piece().number()), row -> "");
    var piece = column("in.piece", row -> row.piece().form(), row -> row.piece().glaze());
    var place = column("in.place", row -> row.piece().place(), row -> row.piece().pointing());
    var nearest =
        column(
            "in.nearest",
            PieceRow::gap,
            row -> row.nearest().isEmpty() ? "" : words.of("in.nearestTo", row.nearest()));
    number.prefWidthProperty().bind(Em.of(explained, Math.max(named(number), NUMBER)));
    nearest.prefWidthProperty().bind(Em.of(explained, Math.max(named(nearest), NEAREST)));
    place.prefWidthProperty().bind(Em.of(explained, PLACE));
    DoubleBinding left =
        table
            .widthProperty()
            .subtract(number.widthProperty())
            .subtract(place.widthProperty())
            .subtract(nearest.widthProperty())
            .subtract(BAR);
    piece.prefWidthProperty().bind(Bindings.max(Em.of(explained, PIECE), left));
    table.getColumns().add(number);
    table.getColumns().add(piece);
    table.getColumns().add(place);
    table.getColumns().add(nearest);
  }

  /** What a column's heading needs. */
  private static double named(TableColumn<?, ?> column) {
    return column.getText().length() * LETTER + BAR;
  }

  private TableColumn<PieceRow, PieceRow> column(
      String title, Function<PieceRow, String> first, Function<PieceRow, String> second) {
    TableColumn<PieceRow, PieceRow> column = new TableColumn<>(words.of(title));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
    column.setCellFactory(view -> new TwoLineCell<>(first, second));
    column.setSortable(false);
    column.setReorderable(false);
    return column;
  }

  private TableRow<PieceRow> row() {
    return new TableRow<>() {
      @Override
      protected void updateItem(PieceRow row, boolean empty) {
        super.updateItem(row, empty);
        setAccessibleText(empty ? null : told(row));
      }
    };
  }

  private String told(PieceRow row) {
    LayerList.Row piece = row.piece();
    StringBuilder told = new StringBuilder();
    told.append(words.of("in.row", piece.number(), piece.form(), piece.glaze(), piece.place()));
    if (!piece.pointing().isEmpty()) {
      told.append(words.of("in.rowPointing", piece.pointing()));
    }
    if (!row.gap().isEmpty()) {
      told.append(words.of("in.rowNearest", row.nearest(), row.gap()));
    }
    piece.upwards().forEach(one -> told.append(". ").append(one.told()));
    return told.append(row.status()).toString();
  }

  /**
   * Lays out rows that say nothing, so that the first real ones need not wait for all that a row
   * takes to be made ready.
   */
  public void rehearse() {
    Length none = Length.ZERO;
    LayerList.Row piece =
        new LayerList.Row(0, "", "–", "–", "–", "–", Point.ORIGIN, none, List.of());
    table.getItems().setAll(Collections.nCopies(REHEARSED, new PieceRow(piece, "–", "–", "")));
  }

  /** Shows another layer. */
  public void show(LayerList layer, List<PieceRow> rows) {
    heading.setText(words.of("in.heading", layer.layerId()));
    explained.setText(words.of("in.placeText", layer.explained()));
    table.setAccessibleText(words.of("in.text", layer.layerId()));
    if (!table.getItems().equals(rows)) {
      table.getItems().setAll(rows);
    }
  }

  /** Marks a piece as the chosen one, or none. */
  public void mark(String pieceId) {
    Optional<PieceRow> row =
        table.getItems().stream().filter(one -> one.piece().holds(pieceId)).findFirst();
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
