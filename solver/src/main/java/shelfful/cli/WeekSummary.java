package shelfful.cli;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.cost.Energy;
import shelfful.cost.FiringCost;
import shelfful.cost.WeekCost;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.week.Hold;
import shelfful.week.Late;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.Tariff;
import shelfful.week.Waiting;
import shelfful.week.WeekPlan;

/** A week in lines of text. */
final class WeekSummary {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private final WeekPlan plan;
  private final WeekCost cost;
  private final List<WeekFinding> wishes;
  private final List<String> lines = new ArrayList<>();

  private WeekSummary(InspectedWeek week) {
    this.plan = week.plan();
    this.cost = WeekCost.of(plan);
    this.wishes = week.wishes();
  }

  static List<String> of(InspectedWeek week) {
    WeekSummary summary = new WeekSummary(week);
    summary.firings();
    summary.totals();
    summary.late();
    summary.waiting();
    summary.wishes.forEach(wish -> summary.lines.add("Wish not met: " + wish.sentence()));
    return summary.lines;
  }

  private void firings() {
    lines.add(
        String.format(
            Locale.ROOT,
            "%-5s %-14s %-16s %-5s %-18s %-18s %7s %9s %s",
            "Id",
            "Kiln",
            "Program",
            "Cone",
            "Loaded",
            "Empty again",
            "Pieces",
            "kWh",
            plan.request().tariff().map(Tariff::currency).orElse("")));
    for (int i = 0; i < plan.firings().size(); i++) {
      PlannedFiring firing = plan.firings().get(i);
      FiringCost one = cost.firings().get(i);
      Program program = plan.request().program(firing).orElseThrow();
      lines.add(
          String.format(
              Locale.ROOT,
              "%-5s %-14s %-16s %-5s %-18s %-18s %7d %9s %s%s",
              firing.id(),
              firing.kilnId(),
              firing.programId(),
              program.cone().number(),
              time(firing.times().loads()),
              time(firing.times().unpacked()),
              firing.pieces(),
              energy(one.energy()),
              money(one.money()),
              firing.hold() == Hold.FREE ? "" : "  held"));
    }
  }

  private void totals() {
    lines.add("");
    int pieces = plan.firings().stream().mapToInt(PlannedFiring::pieces).sum();
    lines.add(
        plan.firings().size()
            + " firings, "
            + pieces
            + " places filled; "
            + plan.request().pieces()
            + " pieces on the list.");
    String currency = plan.request().tariff().map(Tariff::currency).orElse("");
    if (cost.kilowattHours().isEmpty()) {
      lines.add("Energy: no figure, since the power of a kiln or a meter reading is missing.");
    } else {
      lines.add(
          String.format(
              Locale.ROOT,
              "Energy: %.0f kWh%s%s",
              cost.kilowattHours().getAsDouble(),
              cost.money().isPresent()
                  ? String.format(Locale.ROOT, ", %.2f %s", cost.money().getAsDouble(), currency)
                  : "",
              cost.estimated()
                  ? " (an estimate: connected power x hours x a usual duty)."
                  : " (by the meter)."));
    }
    lines.add("Open a kiln when its maker's manual allows, whatever the plan says.");
  }

  private void late() {
    int pieces = plan.late().stream().mapToInt(Late::pieces).sum();
    lines.add("");
    lines.add(pieces == 0 ? "Nothing is finished late." : pieces + " pieces are finished late:");
    for (Late late : plan.late()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %3d x %s, due %s, late by %d %s",
              late.pieces(),
              late.batchId(),
              plan.request().line(late.batchId()).orElseThrow().batch().due().orElseThrow(),
              late.days(),
              late.days() == 1 ? "day" : "days"));
    }
  }

  private void waiting() {
    int pieces = plan.waiting().stream().mapToInt(w -> w.portion().size()).sum();
    lines.add(pieces == 0 ? "Nothing waits." : pieces + " pieces wait:");
    for (Waiting waiting : plan.waiting()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %3d x %s: %s %s",
              waiting.portion().size(),
              waiting.portion().batchId(),
              waiting.sentence(),
              waiting.mend()));
    }
  }

  private static String time(LocalDateTime time) {
    return time.format(TIME);
  }

  private static String energy(Optional<Energy> energy) {
    return energy
        .map(
            one ->
                String.format(
                    Locale.ROOT,
                    "%s%.1f",
                    one.basis() == Energy.Basis.ESTIMATE ? "~" : "",
                    one.kilowattHours()))
        .orElse("no figure");
  }

  private static String money(OptionalDouble money) {
    return money.isPresent() ? String.format(Locale.ROOT, "%.2f", money.getAsDouble()) : "";
  }
}
