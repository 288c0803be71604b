package shelfful.ui.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * A table to read and to choose rows in, under a line that says what it shows. Columns are as wide
 * as their longest words at any size of letters; each row can be read aloud.
 *
 * @param <S> what a row is about
 */
public final class PlainTable<S> extends VBox {
  /** Round the words of a cell, in pixels at 100 %. */
  private static final double SIDES = 26;

  private static final int FOR_SHORT_LISTS = 4;
  private static final double ROW = 30;

  private final Label caption = new Label();
  private final TableView<S> table = new TableView<>();
  private final List<Function<S, String>> texts = new ArrayList<>();

  /**
   * An empty table.
   *
   * @param caption what it shows
   * @param whenEmpty what stands in it while it has no rows
   */
  public PlainTable(String caption, String whenEmpty) {
    this.caption.setText(caption);
    this.caption.setWrapText(true);
    this.caption.setMinHeight(USE_PREF_SIZE);
    this.caption.getStyleClass().add("quiet");
    this.caption.setLabelFor(table);
    Label empty = new Label(whenEmpty);
    empty.setWrapText(true);
    table.setPlaceholder(empty);
    table.setAccessibleText(caption);
    table.setRowFactory(view -> row());
    table.minHeightProperty().bind(Em.of(this.caption, FOR_SHORT_LISTS * ROW));
    this.caption.fontProperty().addListener(changed -> fit());
    getStyleClass().add("plain-table");
    setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(this.caption, table);
  }

  /** Adds a column; returns the table. */
  public PlainTable<S> column(String heading, Function<S, String> text) {
    TableColumn<S, String> column = new TableColumn<>(heading);
    column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
    column.setSortable(false);
    column.setReorderable(false);
    texts.add(text);
    table.getColumns().add(column);
    return this;
  }

  /** Says something else over the table. */
  public void caption(String text) {
    caption.setText(text);
    table.setAccessibleText(text);
  }

  /** Shows other rows; what was chosen stays chosen where it is still there. */
  public void show(List<S> rows) {
    if (!table.getItems().equals(rows)) {
      table.getItems().setAll(rows);
    }
    fit();
  }

  /** The table itself, to choose in. */
  public TableView<S> table() {
    return table;
  }

  private void fit() {
    Font font = caption.getFont();
    double sides = SIDES * font.getSize() / Look.LETTERS;
    for (int i = 0; i < texts.size(); i++) {
      Function<S, String> text = texts.get(i);
      TableColumn<S, ?> column = table.getColumns().get(i);
      double widest =
          table.getItems().stream()
              .map(text)
              .distinct()
              .mapToDouble(words -> width(words, font))
              .max()
              .orElse(0);
      column.setPrefWidth(Math.ceil(Math.max(widest, width(column.getText(), font)) + sides));
    }
  }

  private static double width(String words, Font font) {
    Text text = new Text(words);
    text.setFont(font);
    return text.getLayoutBounds().getWidth();
  }

  private TableRow<S> row() {
    return new TableRow<>() {
      @Override
      protected void updateItem(S row, boolean empty) {
        super.updateItem(row, empty);
        setAccessibleText(empty || row == null ? null : told(row));
      }
    };
  }

  private String told(S row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      cells.add(table.getColumns().get(i).getText() + " " + texts.get(i).apply(row));
    }
    return cells.stream().collect(Collectors.joining(", "));
  }
}
