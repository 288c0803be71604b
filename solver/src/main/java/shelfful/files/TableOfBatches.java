package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Reads batches out of a table, row by row; a row that is wrong is skipped and noted. */
final class TableOfBatches {
  private TableOfBatches() {}

  static ReadResult<List<Batch>> read(String text, Studio studio, Problems problems) {
    Optional<CsvTable> table =
        CsvTable.read(Delimiter.withoutNamed(text), Delimiter.of(text), problems);
    if (table.isEmpty()) {
      return problems.refused();
    }
    List<CsvTable.Row> rows = table.get().rows();
    if (rows.isEmpty()) {
      problems.add(
          "",
          "",
          "The file is empty.",
          "Its first line must name the columns, among them form and quantity.");
      return problems.refused();
    }
    Optional<BatchHeader> header = BatchHeader.read(rows.get(0), problems);
    if (header.isEmpty()) {
      return problems.refused();
    }
    BatchListCheck check = new BatchListCheck(problems);
    for (CsvTable.Row row : rows.subList(1, rows.size())) {
      new BatchRow(header.get(), row, studio, problems)
          .read()
          .ifPresent(batch -> check.add(batch, "line " + row.line()));
    }
    return check.result();
  }
}
