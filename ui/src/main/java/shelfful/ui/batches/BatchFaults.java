package shelfful.ui.batches;

import java.util.ArrayList;
import java.util.List;
import shelfful.app.BatchLines;
import shelfful.app.TooLarge;
import shelfful.studio.Studio;
import shelfful.ui.words.Words;

/**
 * What is wrong with a list, sentence by sentence: row, column, value, and how to mend it. Ware
 * that is too large for every kiln is told as well, though its row is right.
 */
final class BatchFaults {
  private static final String FORM = "form";

  private final Words words;
  private final TooLarge tooLarge;

  BatchFaults(Words words, Studio studio) {
    this.words = words;
    this.tooLarge = new TooLarge(studio);
  }

  /** The first faults, and how many more there are. */
  List<String> told(List<BatchLines.Line> lines, int most) {
    List<String> told = new ArrayList<>();
    int count = 0;
    for (int i = 0; i < lines.size(); i++) {
      for (BatchLines.Fault fault : faults(lines.get(i))) {
        count++;
        if (told.size() < most) {
          told.add(told(i, fault));
        }
      }
    }
    if (count > most) {
      told.add(words.of("batches.moreFaults", count - most));
    }
    return List.copyOf(told);
  }

  private List<BatchLines.Fault> faults(BatchLines.Line line) {
    List<BatchLines.Fault> all = new ArrayList<>(line.faults());
    line.batch()
        .flatMap(tooLarge::refuses)
        .map(why -> new BatchLines.Fault(FORM, why.sentence(), why.mend()))
        .ifPresent(all::add);
    return all;
  }

  private String told(int row, BatchLines.Fault fault) {
    String column = fault.heading().isEmpty() ? "" : column(fault.heading());
    String key = column.isEmpty() ? "batches.faultOfRow" : "batches.fault";
    return words.of(key, row + 1, column, fault.wrong(), fault.mend()).strip();
  }

  private String column(String heading) {
    String key = "column." + heading;
    return words.keys().contains(key) ? words.of(key) : heading;
  }
}
