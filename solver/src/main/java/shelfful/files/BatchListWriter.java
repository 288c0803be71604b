package shelfful.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import shelfful.measure.Cone;
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
    StringBuilder text = new StringBuilder(String.join(",", BatchColumn.headings())).append('\n');
    for (Batch batch : batches) {
      text.append(
          cells(batch).stream().map(BatchListWriter::cell).collect(Collectors.joining(",")));
      text.append('\n');
    }
    boolean ascii = text.chars().allMatch(c -> c < 128);
    return (ascii ? text.toString() : BYTE_ORDER_MARK + text).getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(Batch batch) {
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

  private static String cell(String text) {
    String guarded = FormulaGuard.guarded(text);
    boolean needsMarks = guarded.chars().anyMatch(c -> ",;\t\"\r\n".indexOf(c) >= 0);
    return needsMarks ? '"' + guarded.replace("\"", "\"\"") + '"' : guarded;
  }
}
