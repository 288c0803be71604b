package shelfful.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.files.SaveFailed;
import shelfful.files.ShortText;
import shelfful.measure.Cone;
import shelfful.measure.TextReading;
import shelfful.record.FiringCourse;
import shelfful.record.UnpackedFiring;
import shelfful.record.WitnessCone;

/** Notes how a firing really went. */
@Command(
    name = "note",
    description = "Notes how a firing went; what is not given stays as it was noted.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  shelfful record note firings/2026-06-01-7K3QM2.firing.json --cone top=6 --cone bottom=5"
          + " --hours-up 9.5 --meter-start 41230.5 --meter-end 41292"
    })
final class RecordNoteCommand implements Callable<Integer> {
  private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
  private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(1000);
  private static final BigDecimal MOST_METER = BigDecimal.valueOf(1_000_000_000L);

  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "FIRING", description = "The file of the firing.")
  private Path firingFile;

  @Option(names = "--program", paramLabel = "TEXT", description = "The program that was run.")
  private String program;

  @Option(
      names = "--cone",
      paramLabel = "PLACE=CONE",
      description = "The cone reached at a place of witness cones; may be given again.")
  private Map<String, String> cones = new LinkedHashMap<>();

  @Option(names = "--hours-up", paramLabel = "HOURS", description = "Hours of firing.")
  private BigDecimal hoursUp;

  @Option(names = "--hours-down", paramLabel = "HOURS", description = "Hours of cooling.")
  private BigDecimal hoursDown;

  @Option(names = "--meter-start", paramLabel = "KWH", description = "The meter before.")
  private BigDecimal meterStart;

  @Option(names = "--meter-end", paramLabel = "KWH", description = "The meter after.")
  private BigDecimal meterEnd;

  RecordNoteCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed {
    Optional<UnpackedFiring> firing = new Reading(err).take(KeepFirings.open(firingFile));
    if (firing.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    Optional<List<WitnessCone>> reached = reached();
    Optional<String> run = Optional.ofNullable(program).flatMap(text -> sound("--program", text));
    if (reached.isEmpty()
        || program != null && run.isEmpty()
        || !areWithin(MOST_HOURS, hoursUp, hoursDown)
        || !areWithin(MOST_METER, meterStart, meterEnd)) {
      return ExitCodes.BAD_INPUT;
    }
    return noted(firing.get(), run, reached.get());
  }

  private int noted(UnpackedFiring firing, Optional<String> run, List<WitnessCone> reached)
      throws SaveFailed {
    FiringCourse was = firing.record().course();
    Optional<Long> start = thousandths(meterStart).or(was::meterStart);
    Optional<Long> end = thousandths(meterEnd).or(was::meterEnd);
    if (start.isPresent() && end.isPresent() && end.get() < start.get()) {
      err.println("--meter-end is less than the reading before the firing. Check both readings.");
      return ExitCodes.BAD_INPUT;
    }
    FiringCourse course =
        new FiringCourse(
            run.or(was::program),
            reached.isEmpty() ? was.cones() : reached,
            minutes(hoursUp).or(was::minutesUp),
            minutes(hoursDown).or(was::minutesDown),
            start,
            end);
    KeepFirings.note(firing.record().with(course), firingFile);
    out.println(firingFile);
    return ExitCodes.DONE;
  }

  private Optional<List<WitnessCone>> reached() {
    List<WitnessCone> reached = new ArrayList<>();
    for (Map.Entry<String, String> one : cones.entrySet()) {
      Optional<Cone> cone = Cone.find(one.getValue());
      if (cone.isEmpty()) {
        err.println(
            "--cone: there is no cone " + one.getValue() + ". Write it as top=6 or top=06.");
        return Optional.empty();
      }
      Optional<String> place = sound("--cone, place", one.getKey());
      if (place.isEmpty()) {
        return Optional.empty();
      }
      reached.add(new WitnessCone(place.get(), cone.get()));
    }
    return Optional.of(reached);
  }

  /** A text as the file keeps it, or empty with the reason told. */
  private Optional<String> sound(String option, String typed) {
    TextReading<String> text = ShortText.read(typed);
    if (text instanceof TextReading.Refused<String> refused) {
      err.println(option + ": " + refused.wrong() + " " + refused.mend());
    }
    return text.value();
  }

  private boolean areWithin(BigDecimal most, BigDecimal... values) {
    for (BigDecimal value : values) {
      if (value != null && (value.signum() < 0 || value.compareTo(most) > 0)) {
        err.println(value + " is out of range: hours are from 0 to 1000, meters from 0 to 10^9.");
        return false;
      }
    }
    return true;
  }

  private static Optional<Long> thousandths(BigDecimal value) {
    return Optional.ofNullable(value).map(some -> some.movePointRight(3).longValue());
  }

  private static Optional<Integer> minutes(BigDecimal hours) {
    return Optional.ofNullable(hours).map(some -> some.multiply(MINUTES).intValue());
  }
}
