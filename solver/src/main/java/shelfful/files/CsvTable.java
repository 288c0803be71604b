package shelfful.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table from a text: rows of cells with the line each begins on.
 *
 * @param rows the header first; empty lines are not among them
 */
record CsvTable(List<Row> rows) {
  private static final int MOST_ROWS = 20_000;

  /**
   * A row.
   *
   * @param line it begins on, as an editor counts
   * @param cells without the spaces round them
   */
  record Row(int line, List<String> cells) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /** Reads the rows, or notes why the text is no table. */
  static Optional<CsvTable> read(String text, char delimiter, Problems problems) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (Iterator<CSVRecord> records = parser.iterator(); records.hasNext(); ) {
        Row row = row(records.next(), parser);
        if (!row.isBlank()) {
          rows.add(row);
        }
        if (rows.size() > MOST_ROWS) {
          problems.add(
              "", "", "The table has more than 20000 rows.", "Check that it is the right file.");
          return Optional.empty();
        }
      }
      return Optional.of(new CsvTable(rows));
    } catch (IOException | UncheckedIOException e) {
      noteQuotation(rows, problems);
      return Optional.empty();
    }
  }

  private static Row row(CSVRecord record, CSVParser parser) {
    // The parser knows the line a row ends on; line breaks within quoted cells lie before it.
    int breaksWithin = 0;
    List<String> cells = new ArrayList<>();
    for (String cell : record) {
      breaksWithin += FileText.breaksIn(cell);
      cells.add(clean(cell));
    }
    return new Row((int) parser.getCurrentLineNumber() - breaksWithin, cells);
  }

  /**
   * A cell as it was meant: without outer spaces, and without the apostrophe that keeps a
   * spreadsheet from taking text for a formula.
   */
  private static String clean(String cell) {
    String plain = cell.replace('\u00a0', ' ').strip();
    return plain.length() > 1 && plain.charAt(0) == '\'' && FormulaGuard.isTrigger(plain.charAt(1))
        ? plain.substring(1)
        : plain;
  }

  private static void noteQuotation(List<Row> rows, Problems problems) {
    String where = rows.isEmpty() ? "line 1" : "after line " + rows.get(rows.size() - 1).line();
    problems.add(
        where,
        "",
        "A quotation mark opens a cell and does not close it, or stands in the middle of it.",
        "Remove the mark, or double every mark within a cell and put the cell between marks.");
  }
}
