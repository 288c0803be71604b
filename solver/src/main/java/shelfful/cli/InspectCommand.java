package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.LoadLimit;
import shelfful.files.FindingsWriter;
import shelfful.files.PlanReader;
import shelfful.inspect.Finding;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;

/** Judges a plan. */
@Command(
    name = "inspect",
    description = "Judges a plan by every rule, from nothing but the plan file itself.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful inspect plans/list-200.plan.json",
      "  shelfful inspect plans/list-200.plan.json --json"
    })
final class InspectCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
  private Path planFile;

  @Option(names = "--json", description = "Print the findings as JSON.")
  private boolean json;

  @Option(
      names = "--no-limit",
      description = "Do not work out how many pieces no setting can exceed; it takes some seconds.")
  private boolean noLimit;

  InspectCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    Reading reading = new Reading(err);
    Optional<Load> load = reading.take(PlanReader.read(planFile));
    if (load.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    Inspection inspection = new Inspector().inspect(load.get());
    boolean passed = inspection instanceof Inspection.Passed;
    List<Finding> findings =
        passed
            ? ((Inspection.Passed) inspection).load().wishes()
            : ((Inspection.Failed) inspection).findings();
    if (json) {
      out.writeBytes(FindingsWriter.bytes(passed, findings));
      out.flush();
    } else {
      out.println(passed ? "The plan breaks no rule." : "The plan breaks rules.");
      findings.forEach(finding -> out.println(line(finding)));
      if (passed && !noLimit) {
        out.println(LoadLimit.of(load.get().request()).sentence(load.get().placed()));
      }
    }
    return passed ? ExitCodes.DONE : ExitCodes.RULE_BROKEN;
  }

  private static String line(Finding finding) {
    String mark = finding.severity() == Finding.Severity.BREAKS ? "BREAKS" : "wish  ";
    String where = finding.layerId().isEmpty() ? "" : finding.layerId() + " ";
    return String.format(
        Locale.ROOT, "%s %s %s%s", mark, finding.rule(), where, finding.sentence());
  }
}
