package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.ChangeAWeek;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekChange;
import shelfful.app.WeekComparison;
import shelfful.files.BatchListReader;
import shelfful.files.WeekReader;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.ware.Batch;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Plans a week otherwise and lays both side by side; saves nothing. */
@Command(
    name = "what-if",
    description = "Shows what changes with an extra firing, a kiln out of order or a new order.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful week what-if plans/month.week.json --extra round-top,glaze-6,2026-06-07T09:00",
      "  shelfful week what-if plans/month.week.json --out-of-order front,2026-06-08T00:00,2026-06-10T00:00",
      "  shelfful week what-if plans/month.week.json --order friday.csv"
    })
final class WhatIfCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "WEEK", description = "A week file or a week plan.")
  private Path weekFile;

  @Mixin private WeekEffortOptions effort = new WeekEffortOptions();

  @Option(
      names = "--extra",
      paramLabel = "KILN,PROGRAM,TIME",
      split = ",",
      description = "One more firing, loaded at this time, in working hours or not.")
  private List<String> extra = List.of();

  @Option(
      names = "--out-of-order",
      paramLabel = "KILN,FROM,TO",
      split = ",",
      description = "A kiln that cannot be used from one time to another.")
  private List<String> outOfOrder = List.of();

  @Option(
      names = "--order",
      paramLabel = "LIST",
      description = "More batches (CSV or JSON), with the days they are due.")
  private Path order;

  WhatIfCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    Reading reading = new Reading(err);
    Optional<WeekReader.Week> week = reading.take(WeekReader.either(weekFile));
    if (week.isEmpty() || !effort.makeSense(err)) {
      return ExitCodes.BAD_INPUT;
    }
    Optional<InspectedWeek> before =
        week.get().plan().isPresent()
            ? judged(week.get().plan().get())
            : plan(effort.asked(week.get().request()));
    if (before.isEmpty()) {
      return ExitCodes.RULE_BROKEN;
    }
    WeekChange change = changed(ChangeAWeek.again(before.get().plan()), reading);
    if (change instanceof WeekChange.Refused refused) {
      err.println(refused.sentence());
      return ExitCodes.BAD_INPUT;
    }
    WeekRequest asked = effort.asked(((WeekChange.Possible) change).request());
    Optional<InspectedWeek> after = plan(asked);
    if (after.isEmpty()) {
      return ExitCodes.FAULT;
    }
    ComparisonLines.of(WeekComparison.of(before.get().plan(), after.get().plan()))
        .forEach(out::println);
    return reading.isClean() ? ExitCodes.DONE : ExitCodes.BAD_INPUT;
  }

  private Optional<InspectedWeek> plan(WeekRequest request) {
    return effort.run(new PlanAWeek(request), new WeekLine(err, true));
  }

  private Optional<InspectedWeek> judged(WeekPlan plan) {
    WeekInspection inspection = new WeekInspector().inspect(plan);
    if (inspection instanceof WeekInspection.Passed passed) {
      return Optional.of(passed.week());
    }
    ((WeekInspection.Failed) inspection).findings().forEach(f -> err.println(f.sentence()));
    return Optional.empty();
  }

  private WeekChange changed(WeekRequest request, Reading reading) {
    WeekChange change = new WeekChange.Possible(request);
    if (order == null && extra.isEmpty() && outOfOrder.isEmpty()) {
      return new WeekChange.Refused("Say what changes: --extra, --out-of-order or --order.");
    }
    if (order != null) {
      Optional<List<Batch>> more = reading.take(BatchListReader.read(order, request.studio()));
      List<WareLine> lines =
          more.orElse(List.of()).stream()
              .map(batch -> new WareLine(batch, Optional.empty(), Optional.empty()))
              .toList();
      change =
          more.isEmpty()
              ? new WeekChange.Refused("The order could not be read.")
              : ChangeAWeek.order(request, lines);
    }
    try {
      if (!outOfOrder.isEmpty() && change instanceof WeekChange.Possible possible) {
        change = broken(possible.request());
      }
      if (!extra.isEmpty() && change instanceof WeekChange.Possible possible) {
        change = added(possible.request());
      }
    } catch (DateTimeParseException unreadable) {
      return new WeekChange.Refused(
          "'"
              + unreadable.getParsedString()
              + "' is not a day with a time. Write it as 2026-06-01T08:00.");
    }
    return change;
  }

  private WeekChange broken(WeekRequest request) {
    if (outOfOrder.size() != 3) {
      return new WeekChange.Refused("--out-of-order takes three things: KILN,FROM,TO.");
    }
    LocalDateTime from = LocalDateTime.parse(outOfOrder.get(1));
    LocalDateTime to = LocalDateTime.parse(outOfOrder.get(2));
    return to.isAfter(from)
        ? ChangeAWeek.outOfOrder(request, outOfOrder.get(0), new Span(from, to))
        : new WeekChange.Refused("--out-of-order: the later time comes last.");
  }

  private WeekChange added(WeekRequest request) {
    return extra.size() == 3
        ? ChangeAWeek.addFiring(
            request, extra.get(0), extra.get(1), LocalDateTime.parse(extra.get(2)))
        : new WeekChange.Refused("--extra takes three things: KILN,PROGRAM,TIME.");
  }
}
