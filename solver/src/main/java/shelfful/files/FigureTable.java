package shelfful.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes a table of figures for a spreadsheet; no cell can run as a formula there. */
public final class FigureTable {
  private FigureTable() {}

  /**
   * Saves the table as comma-separated values, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(List<String> headings, List<List<String>> rows, Path file)
      throws SaveFailed {
    AtomicSave.save(file, bytes(headings, rows));
  }

  /** The bytes of the file: UTF-8, lines ended by a line feed, numbers with a decimal point. */
  public static byte[] bytes(List<String> headings, List<List<String>> rows) {
    List<List<String>> all = new ArrayList<>();
    all.add(headings);
    all.addAll(rows);
    return BatchListWriter.text(all);
  }
}
