package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shelfful.app.ChangeAWeek;
import shelfful.app.KeepAWeek;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekChange;
import shelfful.app.WeekComparison;
import shelfful.review.InspectedWeek;
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
  private final Function<WeekRequest, Optional<InspectedWeek>> planner;

  @Parameters(index = "0", paramLabel = "WEEK", description = "A week file or a week plan.")
  private Path weekFile;

  @Mixin private WeekEffortOptions effort = new WeekEffortOptions();
  @Mixin private WhatIfOptions options = new WhatIfOptions();

  WhatIfCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
    this.planner = request -> effort.run(new PlanAWeek(request), new WeekLine(err, true));
  }

  /** A command that takes its weeks from elsewhere, none of them where the judge refused all. */
  WhatIfCommand(
      PrintStream out, PrintStream err, Function<WeekRequest, Optional<InspectedWeek>> planner) {
    this.out = out;
    this.err = err;
    this.planner = planner;
  }

  @Override
  public Integer call() {
    Reading reading = new Reading(err);
    Optional<KeepAWeek.Week> week = reading.week(weekFile);
    if (week.isEmpty()) {
      return reading.refusal();
    }
    Optional<WhatIfOptions.Wish> wish =
        effort.makeSense(err) ? options.wish(week.get().request(), reading, err) : Optional.empty();
    if (wish.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    Optional<InspectedWeek> before = week.get().plan().or(() -> planned(week.get().request()));
    if (before.isEmpty()) {
      return ExitCodes.FAULT;
    }
    WeekPlan plan = before.get().plan();
    WeekChange change = wish.get().of(ChangeAWeek.again(plan));
    if (change instanceof WeekChange.Refused refused) {
      err.println(refused.sentence());
      return ExitCodes.BAD_INPUT;
    }
    Optional<InspectedWeek> after = planned(((WeekChange.Possible) change).request());
    if (after.isEmpty()) {
      return ExitCodes.FAULT;
    }
    ComparisonLines.of(WeekComparison.of(plan, after.get().plan())).forEach(out::println);
    return reading.after(ExitCodes.DONE);
  }

  private Optional<InspectedWeek> planned(WeekRequest request) {
    Optional<InspectedWeek> week = planner.apply(effort.asked(request));
    if (week.isEmpty()) {
      err.println(WeekLine.NONE_PASSED);
    }
    return week;
  }
}
