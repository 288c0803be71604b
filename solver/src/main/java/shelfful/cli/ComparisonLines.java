package shelfful.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shelfful.app.WeekComparison;

/** Two weeks side by side as text. */
final class ComparisonLines {
  private ComparisonLines() {}

  static List<String> of(WeekComparison comparison) {
    WeekComparison.Figures before = comparison.before();
    WeekComparison.Figures after = comparison.after();
    List<String> lines = new ArrayList<>();
    lines.add(row("", "before", "after"));
    lines.add(row("Firings", before.firings(), after.firings()));
    lines.add(row("Pieces finished late", before.latePieces(), after.latePieces()));
    lines.add(row("Days late, summed", before.lateDays(), after.lateDays()));
    lines.add(row("Pieces that wait", before.waiting(), after.waiting()));
    lines.add(row("kWh", text(before.kilowattHours()), text(after.kilowattHours())));
    lines.add(row("Cost", text(before.money()), text(after.money())));
    lines.add("");
    lines.add(
        comparison.batches().isEmpty()
            ? "No batch fares otherwise."
            : "Batches that fare otherwise:");
    for (WeekComparison.Row batch : comparison.batches()) {
      lines.add(row(batch.batchId(), text(batch.before()), text(batch.after())));
    }
    return lines;
  }

  private static String row(String what, Object before, Object after) {
    return String.format(Locale.ROOT, "%-24s %30s %30s", what, before, after).stripTrailing();
  }

  private static String text(OptionalDouble figure) {
    return figure.isPresent()
        ? String.format(Locale.ROOT, "%.2f", figure.getAsDouble())
        : "no figure";
  }

  private static String text(WeekComparison.Fate fate) {
    if (fate.late() == 0 && fate.waiting() == 0) {
      return "in time";
    }
    String late = fate.late() == 0 ? "" : fate.late() + " late by " + fate.days() + " d";
    String waiting = fate.waiting() == 0 ? "" : fate.waiting() + " wait";
    return late + (late.isEmpty() || waiting.isEmpty() ? "" : ", ") + waiting;
  }
}
