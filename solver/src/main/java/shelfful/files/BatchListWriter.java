package shelfful.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import shelfful.ware.Batch;

/** Writes a batch list, as a table for a spreadsheet or as JSON. */
public final class BatchListWriter {
  private static final String BYTE_ORDER_MARK = "\ufeff";

  private BatchListWriter() {}

  /**
   * Saves the list: as JSON when the name ends in {@code .json}, else as a table.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(List<Batch> batches, Path file) throws SaveFailed {
    boolean json = FileBytes.nameOf(file).toLowerCase(Locale.ROOT).endsWith(".json");
    AtomicSave.save(file, json ? json(batches) : table(batches));
  }

  /** The list as JSON. */
  public static byte[] json(List<Batch> batches) {
    FieldWriter document = DocumentHead.BATCH_LIST.writer();
    document.objects("batches", batches, BatchFormat::write);
    return JsonLayout.bytes(document.object());
  }

  /**
   * The list as comma-separated values in UTF-8. No cell can run as a formula in a spreadsheet.
   * Only a list with letters beyond ASCII gets a byte order mark, without which spreadsheets
   * misread them.
   */
  public static byte[] table(List<Batch> batches) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(BatchColumn.headings());
    batches.forEach(batch -> rows.add(BatchSheet.cells(batch)));
    return text(rows);
  }

  static byte[] text(List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      text.append(row.stream().map(BatchListWriter::cell).collect(Collectors.joining(",")));
      text.append('\n');
    }
    boolean ascii = text.chars().allMatch(c -> c < 128);
    return (ascii ? text.toString() : BYTE_ORDER_MARK + text).getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(String text) {
    String guarded = FormulaGuard.guarded(text);
    boolean needsMarks = guarded.chars().anyMatch(c -> ",;\t\"\r\n".indexOf(c) >= 0);
    return needsMarks ? '"' + guarded.replace("\"", "\"\"") + '"' : guarded;
  }
}
