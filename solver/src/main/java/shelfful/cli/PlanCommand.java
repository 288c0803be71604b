package shelfful.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.OpenAPlan;
import shelfful.app.PlanALoad;
import shelfful.app.SearchLength;
import shelfful.files.BatchListReader;
import shelfful.files.SaveFailed;
import shelfful.files.StudioReader;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.measure.LengthUnit;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Plans a batch list. */
@Command(
    name = "plan",
    description =
        "Plans one firing of a batch list; saves the plan, its loading sheets and a page for a phone.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful plan demo-data/studio.json demo-data/list-200.csv",
      "  shelfful plan demo-data/studio.json demo-data/list-60.csv --steps 200 --seed 7 --json"
    })
final class PlanCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "STUDIO", description = "The studio file (JSON).")
  private Path studioFile;

  @Parameters(index = "1", paramLabel = "LIST", description = "The batch list (CSV or JSON).")
  private Path listFile;

  @Mixin private FiringOptions firing = new FiringOptions();
  @Mixin private SheetOptions sheets = new SheetOptions();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "13",
      description = "How long to search. Default: 13.")
  private int seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "Search so many steps instead: the same seed and steps give the same plan.")
  private Long steps;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Default: 1.")
  private long seed;

  @Option(
      names = "--after",
      paramLabel = "PLAN",
      description = {
        "An earlier plan for the same kiln to go on from: what stood in it stays where it stood,",
        "unless moving it brings more in."
      })
  private Path earlier;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      defaultValue = "plans",
      description = "Where the plan and the sheets go. Default: plans.")
  private Path folder;

  @Option(names = "--json", description = "Print the plan itself, as JSON, instead of a summary.")
  private boolean json;

  @Option(names = "--quiet", description = "No progress.")
  private boolean quiet;

  PlanCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed, IOException {
    StopByHand byHand = StopByHand.listen();
    try {
      Reading reading = new Reading(err);
      Optional<Studio> studio = reading.take(StudioReader.read(studioFile));
      Optional<List<Batch>> batches =
          studio.flatMap(s -> reading.take(BatchListReader.read(listFile, s)));
      Optional<LoadRequest> request = batches.flatMap(list -> request(studio.get(), list));
      if (request.isEmpty()) {
        return ExitCodes.BAD_INPUT;
      }
      PlanALoad planning = new PlanALoad(request.get());
      if (earlier != null && !goesOnFrom(planning, request.get())) {
        return ExitCodes.BAD_INPUT;
      }
      return reading.after(planAndSave(planning, request.get(), byHand));
    } finally {
      byHand.done();
    }
  }

  private boolean goesOnFrom(PlanALoad planning, LoadRequest request) {
    Optional<InspectedLoad> load = new Reading(err).take(OpenAPlan.open(earlier));
    if (load.isEmpty()) {
      err.println("--after: " + earlier + " is not a plan to go on from.");
      return false;
    }
    String kiln = load.get().load().request().firing().kilnId();
    if (!kiln.equals(request.firing().kilnId())) {
      err.println(
          "--after: the plan "
              + earlier
              + " is for the kiln "
              + kiln
              + ", this one for "
              + request.firing().kilnId()
              + ". Name the same kiln with --kiln, or leave --after out.");
      return false;
    }
    planning.startFrom(load.get(), true);
    return true;
  }

  private int planAndSave(PlanALoad planning, LoadRequest request, StopByHand byHand)
      throws SaveFailed, IOException {
    LiveLine live = new LiveLine(err, quiet, request.pieces().size(), folder);
    byHand.stops(planning::stop);
    Optional<InspectedLoad> load = planning.run(length(), live);
    live.end();
    if (load.isEmpty()) {
      err.println("No plan passed the judge; see the report in " + folder + ".");
      return ExitCodes.FAULT;
    }
    PlanFiles files = new PlanFiles(folder, listFile, sheets);
    files.save(load.get());
    print(load.get(), files);
    return byHand.happened() ? ExitCodes.STOPPED : ExitCodes.DONE;
  }

  private void print(InspectedLoad load, PlanFiles files) {
    if (json) {
      out.writeBytes(files.planBytes());
      out.flush();
    } else {
      LengthUnit unit = sheets.unitOr(load.load().request().studio().unit());
      LoadSummary.of(load, sheets.limit(load), unit).forEach(out::println);
      out.println();
      out.println("Plan    " + files.plan());
      out.println("Sheets  " + files.sheets());
      out.println("Phone   " + files.phone());
    }
  }

  private SearchLength length() {
    return steps != null
        ? SearchLength.ofSteps(steps)
        : SearchLength.ofTime(Duration.ofSeconds(seconds));
  }

  private Optional<LoadRequest> request(Studio studio, List<Batch> batches) {
    if (seconds < 0 || seconds > 86_400 || steps != null && steps < 0) {
      err.println("--seconds must be from 0 to 86400, and --steps at least 0.");
      return Optional.empty();
    }
    return new FiringChoice(firing, err).request(studio, batches, seed, steps == null ? 0 : steps);
  }
}
