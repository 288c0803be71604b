package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import shelfful.files.WeekReader;
import shelfful.review.WeekFinding;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.week.WeekPlan;

/** Judges a week plan. */
@Command(
    name = "inspect",
    description = "Judges a week plan: every firing, every load, every piece's way.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  shelfful week inspect plans/month.week.json"})
final class WeekInspectCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The week plan.")
  private Path planFile;

  WeekInspectCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    Optional<WeekPlan> plan = new Reading(err).take(WeekReader.plan(planFile));
    if (plan.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    WeekInspection inspection = new WeekInspector().inspect(plan.get());
    boolean passed = inspection instanceof WeekInspection.Passed;
    List<WeekFinding> findings =
        inspection instanceof WeekInspection.Passed good
            ? good.week().wishes()
            : ((WeekInspection.Failed) inspection).findings();
    out.println(passed ? "The week breaks no rule." : "The week breaks rules.");
    for (WeekFinding finding : findings) {
      String mark = finding.severity() == WeekFinding.Severity.BREAKS ? "BREAKS" : "wish  ";
      out.println(String.format(Locale.ROOT, "%s %s %s", mark, finding.rule(), finding.sentence()));
    }
    return passed ? ExitCodes.DONE : ExitCodes.RULE_BROKEN;
  }
}
