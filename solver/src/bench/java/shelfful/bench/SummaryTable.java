package shelfful.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** The results for people: one line an instance, as a Markdown table. */
final class SummaryTable {
  private static final String HEAD =
      """
      | instance | listed | pieces in: mean (least to most) | spread | worth, mean | bound, gap \
      | 1st load s | within 1 % s | asked / from memory | relaxings | heap MB \
      | greedy | by hand | exact choice | planner loses to |
      |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
      """;

  private SummaryTable() {}

  static String of(List<Result> results) {
    return HEAD + results.stream().map(SummaryTable::line).collect(Collectors.joining());
  }

  private static String line(Result result) {
    LongSummaryStatistics pieces = result.pieces(Method.PLANNER).summaryStatistics();
    List<String> cells = new ArrayList<>();
    cells.add(result.subject());
    cells.add(String.valueOf(result.listed()));
    cells.add(text("%.1f (%d to %d)", pieces.getAverage(), pieces.getMin(), pieces.getMax()));
    cells.add(spread(pieces));
    cells.add(text("%.0f", mean(result, run -> run.figures().worth())) + mustGo(result));
    cells.add(bound(result));
    cells.add(text("%.2f", mean(result, run -> run.effort().firstMillis().orElse(0)) / 1000));
    cells.add(text("%.1f", mean(result, run -> run.effort().nearMillis().orElse(0)) / 1000));
    double asked = mean(result, run -> run.effort().work().asked());
    double known = mean(result, run -> run.effort().work().fromMemory());
    cells.add(text("%,.0f / %,.0f", asked, known));
    cells.add(text("%,.0f", mean(result, run -> run.effort().work().relaxings())));
    cells.add(text("%.0f", mean(result, run -> run.effort().heapMegabytes())));
    cells.add(other(result, Method.GREEDY));
    cells.add(other(result, Method.BY_HAND));
    cells.add(other(result, Method.EXACT_CHOICE));
    cells.add(losses(result));
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static String spread(LongSummaryStatistics pieces) {
    long apart = pieces.getMax() - pieces.getMin();
    return text("%d, %.1f %%", apart, 100.0 * apart / Math.max(1, pieces.getMax()));
  }

  private static String mustGo(Result result) {
    double waiting = mean(result, run -> run.figures().mustGoWaiting());
    return waiting == 0 ? "" : text(", %.1f must-go wait", waiting);
  }

  private static String bound(Result result) {
    if (result.limit().isEmpty()) {
      return "–";
    }
    Limit limit = result.limit().get();
    double worth = mean(result, run -> run.figures().worth());
    return text("%d, %.1f %%", limit.pieces(), 100 * (limit.worth() - worth) / limit.worth());
  }

  /** Another method's best load: its pieces, and its worth against the planner's mean. */
  private static String other(Result result, Method method) {
    Optional<Figures> best = result.best(method);
    if (best.isEmpty()) {
      return "–";
    }
    double planned = mean(result, run -> run.figures().worth());
    double against = 100 * (best.get().worth() - planned) / planned;
    String mustGo =
        best.get().mustGoWaiting() == 0 ? "" : ", " + best.get().mustGoWaiting() + " must-go wait";
    String proof = result.by(method).stream().allMatch(Run::isProven) ? "" : ", not proven";
    return text("%d, %+.1f %%", best.get().pieces(), against) + mustGo + proof;
  }

  private static String losses(Result result) {
    int seeds = result.by(Method.PLANNER).size();
    List<String> lost = new ArrayList<>();
    for (Method method : Method.values()) {
      long times = result.plannerLosesTo(method);
      if (method != Method.PLANNER && times > 0) {
        lost.add(text("%s: %d of %d", method, times, seeds));
      }
    }
    return lost.isEmpty() ? "none" : String.join(", ", lost);
  }

  private static double mean(Result result, ToLongFunction<Run> figure) {
    return result.by(Method.PLANNER).stream().mapToLong(figure).average().orElse(0);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
