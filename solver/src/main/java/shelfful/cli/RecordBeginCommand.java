package shelfful.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.app.LoadLimit;
import shelfful.app.OpenAPlan;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;

/** Begins the record of a firing from its plan. */
@Command(
    name = "begin",
    description =
        "Begins the record of a plan that is fired; nothing the plan says is typed again.",
    mixinStandardHelpOptions = true)
final class RecordBeginCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
  private Path planFile;

  @Option(names = "--day", paramLabel = "DATE", description = "Day of the firing. Default: today.")
  private LocalDate day;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      defaultValue = "firings",
      description = "Where firings are kept. Default: firings.")
  private Path folder;

  RecordBeginCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed, IOException {
    Reading reading = new Reading(err);
    Optional<InspectedLoad> load = reading.take(OpenAPlan.open(planFile));
    if (load.isEmpty()) {
      return reading.refusal();
    }
    LoadLimit limit = LoadLimit.of(load.get().load().request());
    LocalDate on = day == null ? LocalDate.now() : day;
    out.println(new KeepFirings(folder).begin(load.get(), on, Optional.of(limit.pieces())));
    return ExitCodes.DONE;
  }
}
