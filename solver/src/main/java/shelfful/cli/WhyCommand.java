package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.OpenAPlan;
import shelfful.files.PlanWriter;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;
import shelfful.remedy.Explanation;
import shelfful.remedy.Remedy;
import shelfful.remedy.RemedyEffort;
import shelfful.remedy.RemedySearch;

/** Says why pieces wait and what would bring them in. */
@Command(
    name = "why",
    description =
        "Says for everything that waits in a plan why it waits, and the cheapest way found to bring"
            + " it in. Every way told was planned and passed the judge.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful why plans/list-200.plan.json",
      "  shelfful why plans/list-200.plan.json --every",
      "  shelfful why plans/list-200.plan.json --apply 3"
    })
final class WhyCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
  private Path planFile;

  @Option(
      names = "--steps",
      paramLabel = "N",
      defaultValue = "6",
      description = "Steps of the search in each try. Default: 6.")
  private long steps;

  @Option(
      names = "--every",
      description = "Look for every kind of remedy, not only for the cheapest.")
  private boolean every;

  @Option(
      names = "--apply",
      paramLabel = "N",
      description = "Write the plan that remedy number N leads to, as a new file.")
  private Integer apply;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description =
          "Where that plan goes; never over a file that is there. Default: beside the plan.")
  private Path target;

  WhyCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed {
    if (steps < 0 || apply != null && apply < 1) {
      err.println("--steps must be at least 0, and --apply at least 1.");
      return ExitCodes.BAD_INPUT;
    }
    Reading reading = new Reading(err);
    Optional<InspectedLoad> load = reading.take(OpenAPlan.open(planFile));
    return load.isEmpty() ? reading.refusal() : explained(load.get());
  }

  private int explained(InspectedLoad load) throws SaveFailed {
    RemedyEffort usual = RemedyEffort.USUAL;
    RemedyEffort effort = new RemedyEffort(steps, usual.layers(), usual.halvings(), every);
    RemedySearch search = new RemedySearch(load, effort);
    if (search.groups().isEmpty()) {
      out.println("Nothing waits.");
    }
    List<Remedy> remedies = new ArrayList<>();
    StopByHand byHand = StopByHand.listen();
    try {
      byHand.stops(search::stop);
      search.explain(explanation -> tell(explanation, remedies));
    } finally {
      byHand.done();
    }
    if (byHand.happened()) {
      return ExitCodes.STOPPED;
    }
    return apply == null ? ExitCodes.DONE : applied(remedies);
  }

  private void tell(Explanation explanation, List<Remedy> remedies) {
    var group = explanation.group();
    out.println(
        group.size()
            + " x "
            + group.batch().formId()
            + group.batch().glazeId().map(id -> " in " + id).orElse("")
            + " ("
            + group.batch().id()
            + "): "
            + group.reason().sentence());
    for (Remedy remedy : explanation.remedies()) {
      remedies.add(remedy);
      out.println("  [" + remedies.size() + "] " + remedy.sentence());
    }
    if (!explanation.inVain().isEmpty()) {
      out.println("      " + explanation.inVain());
    }
  }

  private int applied(List<Remedy> remedies) throws SaveFailed {
    if (apply > remedies.size()) {
      err.println(
          "--apply: there is no remedy " + apply + "; the last is " + remedies.size() + ".");
      return ExitCodes.BAD_INPUT;
    }
    Path to =
        target == null ? PlanFiles.beside(planFile, ".remedy-" + apply + ".plan.json") : target;
    if (Files.exists(to)) {
      err.println("--to: " + to + " is there already. Name another file.");
      return ExitCodes.BAD_INPUT;
    }
    PlanWriter.write(remedies.get(apply - 1).load(), to);
    out.println("Remedy " + apply + "  " + to);
    return ExitCodes.DONE;
  }
}
