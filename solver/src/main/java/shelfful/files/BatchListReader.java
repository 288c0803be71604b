package shelfful.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/**
 * Reads a batch list, as a table (CSV with commas, semicolons or tabs) or as JSON. Batches that are
 * wrong are skipped and noted; the others can be used.
 */
public final class BatchListReader {
  private BatchListReader() {}

  /** Reads a file; never throws for what is in it, nor when it is not there. */
  public static ReadResult<List<Batch>> read(Path path, Studio studio) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    Optional<byte[]> bytes = FileBytes.of(path, problems);
    return bytes.isEmpty()
        ? problems.refused()
        : batches(FileBytes.nameOf(path), bytes.get(), studio);
  }

  /**
   * Reads bytes that are already at hand.
   *
   * @param name to call them by in problems; its ending tells JSON from a table
   */
  public static ReadResult<List<Batch>> read(String name, byte[] bytes, Studio studio) {
    return batches(name, bytes, studio);
  }

  private static ReadResult<List<Batch>> batches(String name, byte[] bytes, Studio studio) {
    Problems problems = new Problems(name);
    if (name.toLowerCase(Locale.ROOT).endsWith(".json")) {
      return json(bytes, studio, problems);
    }
    Optional<String> text = FileText.of(bytes, problems);
    if (text.isEmpty()) {
      return problems.refused();
    }
    return text.get().stripLeading().startsWith("{")
        ? json(bytes, studio, problems)
        : TableOfBatches.read(text.get(), studio, problems);
  }

  private static ReadResult<List<Batch>> json(byte[] bytes, Studio studio, Problems problems) {
    Optional<FieldReader> document =
        FieldReader.ofDocument(bytes, problems).filter(DocumentHead.BATCH_LIST::isHeadOf);
    if (document.isEmpty()) {
      return problems.refused();
    }
    FieldReader fields = document.get();
    List<Batch> good = fields.objects("batches", batch -> BatchFormat.read(batch, studio));
    int faultsWithin = problems.faults();
    fields.make(() -> good);
    // A wrong batch is skipped; a list with fields nobody knows is not understood.
    if (problems.faults() > faultsWithin) {
      return problems.refused();
    }
    BatchListCheck check = new BatchListCheck(problems);
    good.forEach(batch -> check.add(batch, fields.madeAt().pathOf(batch)));
    return check.result();
  }
}
