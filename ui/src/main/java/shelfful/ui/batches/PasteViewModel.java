package shelfful.ui.batches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import shelfful.app.BatchLines;
import shelfful.app.KeepABatchList;
import shelfful.app.PastedTable;
import shelfful.ui.words.Words;

/**
 * A pasted table before it is taken: what its signs and columns are taken for, the rows as batches,
 * and everything wrong with them. Nothing reaches the list until it is confirmed.
 */
public final class PasteViewModel {
  /** More faults would not be read. */
  private static final int MOST_FAULTS = 100;

  private final BatchListViewModel list;
  private final ColumnMemory memory;
  private final Words words;
  private final ReadOnlyObjectWrapper<PastedTable> table = new ReadOnlyObjectWrapper<>();
  private List<BatchLines.Line> lines = List.of();

  /**
   * Looks at a text.
   *
   * @param list that the rows are for
   * @param memory of what columns of these names were taken for before
   */
  public PasteViewModel(BatchListViewModel list, ColumnMemory memory, String text) {
    this.list = list;
    this.memory = memory;
    this.words = list.words();
    show(remembered(PastedTable.guess(text, namesInWords(), list.studio())));
  }

  /** What columns are called in the screen's language, in small letters. */
  private Map<String, String> namesInWords() {
    Map<String, String> names = new HashMap<>();
    for (String heading : BatchLines.headings()) {
      names.put(words.of("column." + heading).toLowerCase(Locale.ROOT), heading);
    }
    return names;
  }

  /** A first row that was a header before is one again, with its columns as they were chosen. */
  private PastedTable remembered(PastedTable guess) {
    return header(guess.withHeader(true))
        .flatMap(memory::recall)
        .filter(mapping -> mapping.size() == guess.mapping().size())
        .map(mapping -> guess.withHeader(true).withMapping(mapping))
        .orElse(guess);
  }

  private static Optional<List<String>> header(PastedTable table) {
    return table.headed() && !table.rows().isEmpty()
        ? Optional.of(table.rows().get(0).cells())
        : Optional.empty();
  }

  private void show(PastedTable other) {
    lines = BatchLines.read(other.asBatchRows(), list.studio());
    table.set(other);
  }

  /** The table as it is taken. */
  public ReadOnlyObjectProperty<PastedTable> table() {
    return table.getReadOnlyProperty();
  }

  /** The words of the person's language. */
  public Words words() {
    return words;
  }

  /** The rows of the table as rows of the list, with what is wrong with each. */
  public List<BatchLines.Line> lines() {
    return lines;
  }

  /** Takes another sign for the one between cells; everything else is guessed anew. */
  public void split(char delimiter) {
    if (delimiter != table.get().delimiter()) {
      show(
          remembered(
              PastedTable.split(table.get().text(), delimiter, namesInWords(), list.studio())));
    }
  }

  /** Takes the first row for a header, or for a batch. */
  public void head(boolean headed) {
    show(table.get().withHeader(headed));
  }

  /** Takes a column for something, or leaves it aside with an empty heading. */
  public void map(int column, String heading) {
    if (!table.get().mapping().get(column).equals(heading)) {
      show(table.get().withColumn(column, heading));
    }
  }

  /** How many rows can be added. */
  public int good() {
    return (int) lines.stream().filter(line -> line.batch().isPresent()).count();
  }

  /** How many rows are wrong. */
  public int wrong() {
    return lines.size() - good();
  }

  /** What the decimal sign was found to be, in words. */
  public String decimalSign() {
    return table
        .get()
        .decimalSign()
        .map(sign -> words.of(sign == ',' ? "paste.comma" : "paste.dot"))
        .orElse(words.of("paste.noDecimals"));
  }

  /** Why nothing can be made of the text, or everything wrong with its rows. */
  public List<String> problems() {
    return table.get().refusals().isEmpty()
        ? list.faults(lines, MOST_FAULTS)
        : table.get().refusals();
  }

  /** Adds the rows that are right to the list, as one step. */
  public void confirm() {
    header(table.get()).ifPresent(header -> memory.remember(header, table.get().mapping()));
    List<List<String>> rows =
        lines.stream()
            .filter(line -> line.batch().isPresent())
            .map(BatchLines.Line::cells)
            .toList();
    list.paste(rows);
  }

  /** The rows that are wrong as a table to be mended in a spreadsheet. */
  public byte[] wrongRows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(BatchLines.headings());
    lines.stream().filter(line -> line.batch().isEmpty()).forEach(line -> rows.add(line.cells()));
    return KeepABatchList.table(rows);
  }
}
