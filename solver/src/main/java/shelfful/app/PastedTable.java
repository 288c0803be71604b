package shelfful.app;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import shelfful.files.Problem;
import shelfful.files.ReadResult;
import shelfful.files.TableText;
import shelfful.studio.Studio;

/**
 * A table that somebody pasted, with what its signs and columns are taken for. Nothing of it counts
 * until the person says that it is right.
 *
 * @param text as it was pasted
 * @param delimiter between cells
 * @param headed whether the first row names the columns
 * @param mapping for each column the heading of a batch list that it is taken for; empty text for
 *     one that is left aside
 * @param rows all rows, the header among them
 * @param refusals why the text is no table; empty when it is one
 */
public record PastedTable(
    String text,
    char delimiter,
    boolean headed,
    List<String> mapping,
    List<Row> rows,
    List<String> refusals) {
  private static final String BYTE_ORDER_MARK = "\ufeff";
  private static final Pattern DOTTED = Pattern.compile("[+-]?[0-9]+\\.[0-9]+");
  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]+");

  /** Takes its own copies. */
  public PastedTable {
    mapping = List.copyOf(mapping);
    rows = List.copyOf(rows);
    refusals = List.copyOf(refusals);
  }

  /**
   * A row.
   *
   * @param line it begins on, from 1
   */
  public record Row(int line, List<String> cells) {
    /** Takes its own copy. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * Guesses sign, header and columns.
   *
   * @param words other names of headings, such as those of the screen's language, in small letters
   */
  public static PastedTable guess(String text, Map<String, String> words, Studio studio) {
    String plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    return split(plain, TableText.delimiter(plain), words, studio);
  }

  /** The same text with another sign between the cells; header and columns are guessed anew. */
  public static PastedTable split(
      String text, char delimiter, Map<String, String> words, Studio studio) {
    ReadResult<List<TableText.Row>> read = TableText.rows(text, delimiter);
    if (read.found().isEmpty() || read.found().get().isEmpty()) {
      List<String> why =
          read.problems().stream()
              .map(PastedTable::sentence)
              .filter(one -> !one.isBlank())
              .toList();
      return new PastedTable(text, delimiter, false, List.of(), List.of(), why);
    }
    List<Row> rows =
        read.found().get().stream().map(row -> new Row(row.line(), row.cells())).toList();
    ColumnGuess guess = new ColumnGuess(words, studio);
    boolean headed = guess.isHeader(rows.get(0).cells());
    List<String> mapping =
        headed ? guess.byHeader(rows.get(0).cells()) : guess.byContent(rows, width(rows));
    return new PastedTable(text, delimiter, headed, padded(mapping, width(rows)), rows, List.of());
  }

  private static String sentence(Problem problem) {
    String where = problem.where().isEmpty() ? "" : problem.where() + ": ";
    return where + problem.wrong() + " " + problem.mend();
  }

  private static int width(List<Row> rows) {
    return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
  }

  private static List<String> padded(List<String> mapping, int width) {
    List<String> padded = new ArrayList<>(mapping);
    padded.addAll(Collections.nCopies(Math.max(0, width - mapping.size()), ""));
    return padded;
  }

  /** The same table, its first row taken for a header or not; the columns stay as they are. */
  public PastedTable withHeader(boolean isHeaded) {
    return new PastedTable(text, delimiter, isHeaded, mapping, rows, refusals);
  }

  /** The same table with a column taken for something else, and no other column for the same. */
  public PastedTable withColumn(int column, String heading) {
    List<String> other = new ArrayList<>(mapping);
    other.replaceAll(one -> one.equals(heading) ? "" : one);
    other.set(column, heading);
    return withMapping(other);
  }

  /** The same table with all columns taken for something else. */
  public PastedTable withMapping(List<String> other) {
    return new PastedTable(text, delimiter, headed, other, rows, refusals);
  }

  /** The rows below the header. */
  public List<Row> body() {
    return headed && !rows.isEmpty() ? rows.subList(1, rows.size()) : rows;
  }

  /** The decimal sign that the cells have, or empty where no cell has one or some have each. */
  public Optional<Character> decimalSign() {
    boolean dotted = anyCell(DOTTED);
    boolean comma = anyCell(WITH_COMMA);
    return dotted == comma ? Optional.empty() : Optional.of(dotted ? '.' : ',');
  }

  private boolean anyCell(Pattern pattern) {
    return body().stream()
        .flatMap(row -> row.cells().stream())
        .anyMatch(cell -> pattern.matcher(cell).matches());
  }

  /** Whether the header names what a batch list cannot do without. */
  public boolean isBatchList() {
    return headed && mapping.contains("form") && mapping.contains("quantity");
  }

  /** The names of columns that are left aside. */
  public List<String> leftAside() {
    List<String> header = headed && !rows.isEmpty() ? rows.get(0).cells() : List.of();
    List<String> aside = new ArrayList<>();
    for (int i = 0; i < header.size(); i++) {
      if (mapping.get(i).isEmpty() && !header.get(i).isEmpty()) {
        aside.add(header.get(i));
      }
    }
    return aside;
  }

  /** The body as rows of a batch list, by the columns chosen. */
  public List<List<String>> asBatchRows() {
    List<String> headings = BatchLines.headings();
    List<List<String>> all = new ArrayList<>();
    for (Row row : body()) {
      List<String> cells = new ArrayList<>(Collections.nCopies(headings.size(), ""));
      for (int i = 0; i < row.cells().size() && i < mapping.size(); i++) {
        int at = headings.indexOf(mapping.get(i));
        if (at >= 0) {
          cells.set(at, row.cells().get(i));
        }
      }
      all.add(List.copyOf(cells));
    }
    return List.copyOf(all);
  }
}
