package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.figures.CauseCount;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.UnpackedFiring;

/** Shows one firing in a few lines. */
@Command(
    name = "show",
    description = "Shows a firing and what became of its pieces.",
    mixinStandardHelpOptions = true)
final class RecordShowCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "FIRING", description = "The file of the firing.")
  private Path firingFile;

  RecordShowCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    Optional<UnpackedFiring> firing = new Reading(err).take(KeepFirings.open(firingFile));
    if (firing.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    show(firing.get());
    return ExitCodes.DONE;
  }

  private void show(UnpackedFiring firing) {
    FiringRecord record = firing.record();
    int in = record.pieces().size();
    out.printf(
        Locale.ROOT,
        "%s: kiln %s, cone %s, %d pieces in, %d waited%s.%n",
        record.day(),
        record.firing().kilnId(),
        record.firing().cone().number(),
        in,
        record.waited(),
        record.limit().map(limit -> ", no setting could hold more than " + limit).orElse(""));
    course(record.course());
    out.printf(
        Locale.ROOT,
        "%d good, %d seconds, %d lost, %d not looked at.%n",
        firing.count(Grade.GOOD),
        firing.count(Grade.SECOND),
        firing.count(Grade.LOST),
        in - firing.results().size());
    for (CauseCount cause : CauseCount.of(List.of(firing))) {
      out.printf(Locale.ROOT, "  %3d x %s (%d lost)%n", cause.all(), cause.cause(), cause.lost());
    }
  }

  private void course(FiringCourse course) {
    course.program().ifPresent(program -> out.println("Program: " + program));
    course
        .cones()
        .forEach(cone -> out.println("Cone " + cone.reached().number() + " at " + cone.place()));
    course
        .minutesUp()
        .ifPresent(minutes -> out.printf(Locale.ROOT, "%.1f hours up%n", minutes / 60.0));
    course
        .minutesDown()
        .ifPresent(minutes -> out.printf(Locale.ROOT, "%.1f hours down%n", minutes / 60.0));
    course.kilowattHours().ifPresent(used -> out.printf(Locale.ROOT, "%.1f kWh%n", used));
  }
}
