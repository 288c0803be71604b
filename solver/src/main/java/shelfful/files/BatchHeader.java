package shelfful.files;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The header of a table of batches.
 *
 * @param columns where each known column stands, from 0
 * @param width how many columns there are
 */
record BatchHeader(Map<BatchColumn, Integer> columns, int width) {

  /** Reads the header row, or notes every reason why the table cannot be read by it. */
  static Optional<BatchHeader> read(CsvTable.Row row, Problems problems) {
    int faultsBefore = problems.faults();
    Map<BatchColumn, Integer> columns = new EnumMap<>(BatchColumn.class);
    for (int i = 0; i < row.cells().size(); i++) {
      int place = i;
      BatchColumn.of(row.cells().get(i))
          .ifPresent(column -> put(column, place, columns, row, problems));
    }
    // A first line without any known heading is no header, and its cells are no headings.
    for (int i = 0; i < row.cells().size() && !columns.isEmpty(); i++) {
      noteUnknown(row.cells().get(i), place(row, i), problems);
    }
    noteMissing(columns, row, problems);
    return problems.faults() > faultsBefore
        ? Optional.empty()
        : Optional.of(new BatchHeader(columns, row.cells().size()));
  }

  private static void put(
      BatchColumn column,
      int at,
      Map<BatchColumn, Integer> columns,
      CsvTable.Row row,
      Problems problems) {
    if (columns.putIfAbsent(column, at) != null) {
      problems.add(
          place(row, at),
          column.heading(),
          "The column stands there twice.",
          "Remove one of the two.");
    }
  }

  private static void noteUnknown(String heading, String where, Problems problems) {
    if (heading.isEmpty() || BatchColumn.of(heading).isPresent()) {
      return;
    }
    Optional<String> meant = NearMiss.of(heading, BatchColumn.headings());
    if (meant.isPresent()) {
      problems.add(
          where,
          Shown.text(heading),
          "No column of this name is known.",
          "Did you mean " + Shown.quoted(meant.get()) + "?");
    } else {
      problems.warn(
          where,
          Shown.text(heading),
          "No column of this name is known, so it is left aside.",
          "Give it the name of a column that is known, or leave it as it is.");
    }
  }

  private static void noteMissing(
      Map<BatchColumn, Integer> columns, CsvTable.Row row, Problems problems) {
    List<BatchColumn> missing =
        List.of(BatchColumn.values()).stream()
            .filter(column -> column.isRequired() && !columns.containsKey(column))
            .toList();
    for (BatchColumn column : missing) {
      problems.add(
          "line " + row.line(),
          column.heading(),
          "The column is missing.",
          "The first line must name the columns, among them form and quantity.");
    }
  }

  private static String place(CsvTable.Row row, int cell) {
    return "line " + row.line() + ", column " + (cell + 1);
  }
}
