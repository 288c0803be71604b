package shelfful.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A table out of a text that somebody pasted, before anything is known of its columns. */
public final class TableText {
  private static final int LINES_LOOKED_AT = 20;

  private TableText() {}

  /**
   * A row that is not blank.
   *
   * @param line it begins on, from 1
   * @param cells without the spaces round them
   */
  public record Row(int line, List<String> cells) {
    /** Takes its own copy. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * The sign between cells: the one that the header shows; else a tab if there is one, as
   * spreadsheets put on the clipboard; else the one that every line has most of. A comma may be a
   * decimal sign, so a semicolon wins a tie.
   */
  public static char delimiter(String text) {
    if (Delimiter.isSure(text)) {
      return Delimiter.of(text);
    }
    if (text.indexOf('\t') >= 0) {
      return '\t';
    }
    return least(text, ';') > 0 && least(text, ';') >= least(text, ',') ? ';' : ',';
  }

  private static long least(String text, char sign) {
    return text.lines()
        .filter(line -> !line.isBlank())
        .limit(LINES_LOOKED_AT)
        .mapToLong(line -> line.chars().filter(c -> c == sign).count())
        .min()
        .orElse(0);
  }

  /** The text's rows, or why it is no table. */
  public static ReadResult<List<Row>> rows(String text, char delimiter) {
    Problems problems = new Problems("");
    Optional<CsvTable> table = CsvTable.read(Delimiter.withoutNamed(text), delimiter, problems);
    return problems.result(
        table.map(
            one -> one.rows().stream().map(row -> new Row(row.line(), row.cells())).toList()));
  }

  /** Rows as comma-separated text that a spreadsheet cannot take for formulas. */
  public static byte[] written(List<List<String>> rows) {
    return BatchListWriter.text(rows);
  }

  /** The text of a file in one of the encodings that are read, or why there is none. */
  public static ReadResult<String> of(Path file) {
    Problems problems = new Problems(FileBytes.nameOf(file));
    return problems.result(
        FileBytes.of(file, problems).flatMap(bytes -> FileText.of(bytes, problems)));
  }
}
