package shelfful.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/**
 * A batch list as rows of cells while it is being written: the columns of our tables in their
 * order, each row read by the rules of a file.
 */
public final class BatchSheet {
  private static final BatchHeader HEADER = header();

  private BatchSheet() {}

  /** A row as it was read: its batch if it makes one, and everything wrong with it. */
  public record Line(Optional<Batch> batch, List<Problem> problems) {
    /** Takes its own copy. */
    public Line {
      problems = List.copyOf(problems);
    }
  }

  private static BatchHeader header() {
    Map<BatchColumn, Integer> places = new EnumMap<>(BatchColumn.class);
    for (BatchColumn column : BatchColumn.values()) {
      places.put(column, column.ordinal());
    }
    return new BatchHeader(places, places.size());
  }

  /** The headings of all columns, in the order of the cells. */
  public static List<String> headings() {
    return BatchColumn.headings();
  }

  /** The heading that a text stands for, as in a file: capitals do not count. */
  public static Optional<String> headingOf(String text) {
    return BatchColumn.of(text).map(BatchColumn::heading);
  }

  /** A batch as cells. */
  public static List<String> cells(Batch batch) {
    return List.of(
        batch.id(),
        batch.formId(),
        batch.glazeId().orElse(""),
        Integer.toString(batch.quantity()),
        FileValue.word(batch.stage()),
        batch.cone().map(Cone::number).orElse(""),
        batch.mustGo() ? "yes" : "",
        Integer.toString(batch.priority()),
        batch.due().map(LocalDate::toString).orElse(""),
        batch.order().orElse(""),
        batch.set().orElse(""),
        FileValue.word(batch.lidPlace()));
  }

  /** Reads every row, however many are wrong; rows count from 1 in what is said of them. */
  public static List<Line> read(List<List<String>> rows, Studio studio) {
    BatchListCheck check = new BatchListCheck(new Problems(""));
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Problems problems = new Problems("");
      CsvTable.Row row = new CsvTable.Row(i + 1, rows.get(i).stream().map(String::strip).toList());
      String where = "line " + row.line();
      Optional<Batch> batch = new BatchRow(HEADER, row, studio, problems).read();
      batch.ifPresent(one -> check.add(one, where, problems));
      lines.add(new Line(batch.filter(one -> problems.faults() == 0), problems.all()));
    }
    return lines;
  }
}
