package shelfful.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.ChangeAWeek;
import shelfful.app.KeepAWeek;
import shelfful.app.PlanAWeek;
import shelfful.files.SaveFailed;
import shelfful.review.InspectedWeek;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Plans a week. */
@Command(
    name = "plan",
    description = "Plans a run of firings; saves the plan, and by choice sheets and a calendar.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful week plan demo-data/month.json",
      "  shelfful week plan plans/month.week.json --freeze F1 --freeze F2",
      "  shelfful week plan demo-data/month.json --rounds 0 --seed 7 --json"
    })
final class WeekPlanCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(
      index = "0",
      paramLabel = "WEEK",
      description =
          "A week file, or a week plan to be planned again with as few changes as can be.")
  private Path weekFile;

  @Mixin private WeekEffortOptions effort = new WeekEffortOptions();
  @Mixin private SheetOptions sheetOptions = new SheetOptions();

  @Option(
      names = "--freeze",
      paramLabel = "ID",
      description = "A firing of the plan that must stay as it is. May be given several times.")
  private List<String> freeze = List.of();

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      defaultValue = "plans",
      description = "Where the files go. Default: plans.")
  private Path folder;

  @Option(names = "--sheets", description = "Save the loading sheets of every firing as PDF.")
  private boolean sheets;

  @Option(names = "--ics", description = "Save a calendar file (iCalendar, local times).")
  private boolean ics;

  @Option(names = "--json", description = "Print the plan itself, as JSON, instead of a summary.")
  private boolean json;

  @Option(names = "--quiet", description = "No progress.")
  private boolean quiet;

  WeekPlanCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed, IOException {
    StopByHand byHand = StopByHand.listen();
    try {
      Reading reading = new Reading(err);
      Optional<KeepAWeek.Week> week = reading.week(weekFile);
      if (week.isEmpty()) {
        return reading.refusal();
      }
      Optional<WeekPlan> plan = week.get().plan().map(InspectedWeek::plan);
      if (!effort.makeSense(err) || !canFreeze(plan)) {
        return ExitCodes.BAD_INPUT;
      }
      WeekRequest request =
          plan.map(before -> ChangeAWeek.freeze(before, freeze)).orElse(week.get().request());
      return reading.after(planAndSave(effort.asked(request), byHand));
    } finally {
      byHand.done();
    }
  }

  private boolean canFreeze(Optional<WeekPlan> plan) {
    for (String id : freeze) {
      if (plan.flatMap(before -> before.firing(id)).isEmpty()) {
        err.println("--freeze: " + weekFile.getFileName() + " has no planned firing " + id + ".");
        return false;
      }
    }
    return true;
  }

  private int planAndSave(WeekRequest request, StopByHand byHand) throws SaveFailed, IOException {
    PlanAWeek planning = new PlanAWeek(request);
    byHand.stops(planning::stop);
    Optional<InspectedWeek> week = effort.run(planning, new WeekLine(err, quiet));
    if (week.isEmpty()) {
      err.println(WeekLine.NONE_PASSED);
      return ExitCodes.FAULT;
    }
    WeekFiles files = new WeekFiles(folder, weekFile);
    files.plan(week.get());
    if (ics) {
      files.calendar(week.get());
    }
    if (sheets) {
      files.sheets(week.get(), sheetOptions);
    }
    print(week.get(), files);
    return byHand.happened() ? ExitCodes.STOPPED : ExitCodes.DONE;
  }

  private void print(InspectedWeek week, WeekFiles files) {
    if (json) {
      out.writeBytes(files.planBytes());
      out.flush();
      return;
    }
    WeekSummary.of(week).forEach(out::println);
    out.println();
    files.saved().forEach(file -> out.println("Saved   " + file));
  }
}
