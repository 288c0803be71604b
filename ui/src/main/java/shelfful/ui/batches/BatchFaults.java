package shelfful.ui.batches;

import java.util.ArrayList;
import java.util.List;
import shelfful.app.BatchLines;
import shelfful.ui.words.Words;

/** What is wrong with a list, sentence by sentence: row, column, value, and how to mend it. */
final class BatchFaults {
  private BatchFaults() {}

  /** The first faults, and how many more there are. */
  static List<String> told(Words words, List<BatchLines.Line> lines, int most) {
    List<String> told = new ArrayList<>();
    int count = 0;
    for (int i = 0; i < lines.size(); i++) {
      for (BatchLines.Fault fault : lines.get(i).faults()) {
        count++;
        if (told.size() < most) {
          told.add(told(words, i, fault));
        }
      }
    }
    if (count > most) {
      told.add(words.of("batches.moreFaults", count - most));
    }
    return List.copyOf(told);
  }

  private static String told(Words words, int row, BatchLines.Fault fault) {
    String column = fault.heading().isEmpty() ? "" : column(words, fault.heading());
    String key = column.isEmpty() ? "batches.faultOfRow" : "batches.fault";
    return words.of(key, row + 1, column, fault.wrong(), fault.mend()).strip();
  }

  private static String column(Words words, String heading) {
    String key = "column." + heading;
    return words.keys().contains(key) ? words.of(key) : heading;
  }
}
