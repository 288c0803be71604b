package shelfful.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.files.BatchSheet;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** A batch list while it is being written: rows of cells, each read by the rules of a file. */
public final class BatchLines {
  private BatchLines() {}

  /**
   * A row.
   *
   * @param cells a text for each of the {@link #headings()}, as it was typed
   * @param batch that the cells make; empty while something is wrong with them
   * @param faults what is wrong
   */
  public record Line(List<String> cells, Optional<Batch> batch, List<Fault> faults) {
    /** Takes its own copies. */
    public Line {
      cells = List.copyOf(cells);
      faults = List.copyOf(faults);
    }

    /** What is wrong with one cell, if anything. */
    public Optional<Fault> fault(String heading) {
      return faults.stream().filter(fault -> fault.heading().equals(heading)).findFirst();
    }
  }

  /**
   * Something wrong with a cell.
   *
   * @param heading of its column; empty when it is about the whole row
   * @param wrong a sentence with the value
   * @param mend a sentence: what to write instead
   */
  public record Fault(String heading, String wrong, String mend) {}

  /** What a list has columns for, in the order of the cells. */
  public static List<String> headings() {
    return BatchSheet.headings();
  }

  /** The cells of a batch. */
  public static List<String> cells(Batch batch) {
    return BatchSheet.cells(batch);
  }

  /** Reads rows; every row becomes a line, with or without a batch. */
  public static List<Line> read(List<List<String>> rows, Studio studio) {
    List<BatchSheet.Line> read = BatchSheet.read(rows, studio);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<Fault> faults =
          read.get(i).problems().stream()
              .map(problem -> new Fault(problem.field(), problem.wrong(), problem.mend()))
              .toList();
      lines.add(new Line(rows.get(i), read.get(i).batch(), faults));
    }
    return List.copyOf(lines);
  }
}
