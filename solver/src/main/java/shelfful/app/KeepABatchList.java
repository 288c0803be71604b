package shelfful.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shelfful.files.BatchListReader;
import shelfful.files.BatchListWriter;
import shelfful.files.SaveFailed;
import shelfful.files.TableText;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Opens and saves a batch list. */
public final class KeepABatchList {
  private KeepABatchList() {}

  /** Opens a list, as a table or as JSON; never throws for what is in it. */
  public static Opened<List<Batch>> open(Path file, Studio studio) {
    return Opened.of(BatchListReader.read(file, studio));
  }

  /** The text of a table in a file, to be looked at before it is taken. */
  public static Opened<String> text(Path file) {
    return Opened.of(TableText.of(file));
  }

  /**
   * Saves a list in one step, keeping the version before; as JSON when the name ends in {@code
   * .json}, else as a table.
   *
   * @return why it could not be saved; empty when it was
   */
  public static Optional<String> save(List<Batch> batches, Path file) {
    try {
      BatchListWriter.write(batches, file);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }

  /** Rows of cells as a table for a spreadsheet. */
  public static byte[] table(List<List<String>> rows) {
    return TableText.written(rows);
  }
}
