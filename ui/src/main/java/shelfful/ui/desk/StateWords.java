package shelfful.ui.desk;

import java.util.OptionalInt;
import shelfful.measure.LengthText;
import shelfful.ui.words.Words;

/** How a plan stands, in a line: words and figures that were measured, no scores. */
record StateWords(Words words) {

  /**
   * The line.
   *
   * @param most how many pieces any setting can hold at most, where that was computed
   * @param last what goes on, or where the plan comes from
   */
  String of(ShownLoad load, OptionalInt most, String last) {
    StringBuilder line = new StringBuilder();
    line.append(words.of("state.counts", load.lists().counts(), load.lists().layers().size()));
    most.ifPresent(count -> line.append(limit(load, count)));
    load.smallestGap()
        .ifPresent(gap -> line.append(words.of("state.gap", LengthText.write(gap, load.unit()))));
    int faults = load.judged().faults().size();
    if (faults > 0) {
      line.append(words.of("state.faults", faults));
    }
    line.append(". ").append(last);
    return line.toString().strip();
  }

  /** Full is what holds as many as any setting can, and breaks no rule. */
  private String limit(ShownLoad load, int most) {
    boolean full = load.judged().load().placed() == most && load.judged().faults().isEmpty();
    return words.of(full ? "state.full" : "state.most", most);
  }
}
