package shelfful.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shelfful.files.BatchListReader;
import shelfful.files.BatchListWriter;
import shelfful.files.Problem;
import shelfful.files.ReadResult;
import shelfful.files.SaveFailed;
import shelfful.files.TableText;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Opens and saves a batch list. */
public final class KeepABatchList {
  private KeepABatchList() {}

  /** Opens a list, as a table or as JSON; never throws for what is in it. */
  public static Opened<List<Batch>> open(Path file, Studio studio) {
    ReadResult<List<Batch>> read = BatchListReader.read(file, studio);
    List<String> notes = read.problems().stream().map(Problem::sentence).toList();
    return read.found()
        .<Opened<List<Batch>>>map(found -> new Opened.Ready<>(found, notes))
        .orElseGet(() -> new Opened.Refused<>(false, notes));
  }

  /** The text of a table in a file, to be looked at before it is taken. */
  public static Opened<String> text(Path file) {
    ReadResult<String> read = TableText.of(file);
    List<String> notes = read.problems().stream().map(Problem::sentence).toList();
    return read.found()
        .<Opened<String>>map(found -> new Opened.Ready<>(found, notes))
        .orElseGet(() -> new Opened.Refused<>(false, notes));
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
