package shelfful.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import shelfful.calendar.WeekCalendar;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.Printing;
import shelfful.files.ReadResult;
import shelfful.files.WeekReader;
import shelfful.files.WeekWriter;
import shelfful.inspect.InspectedLoad;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Opens weeks and saves them, as our own file, as a calendar and as sheets. */
public final class KeepAWeek {
  private KeepAWeek() {}

  /**
   * A week that was opened.
   *
   * @param request what is asked
   * @param plan the plan, where the file is of one
   */
  public record Week(WeekRequest request, Optional<InspectedWeek> plan) {}

  /**
   * Opens a week or a week plan; a plan that breaks rules is refused. Never throws for its bytes.
   */
  public static Opened<Week> open(Path file) {
    ReadResult<WeekReader.Week> read = WeekReader.either(file);
    List<String> notes = read.sentences();
    return read.found()
        .map(found -> judged(found, notes))
        .orElseGet(() -> new Opened.Refused<>(false, notes));
  }

  /** Opens what is asked of a week, whose bytes are at hand. */
  public static Opened<Week> open(String name, byte[] bytes) {
    ReadResult<WeekRequest> read = WeekReader.request(name, bytes);
    List<String> notes = read.sentences();
    return read.found()
        .<Opened<Week>>map(found -> new Opened.Ready<>(new Week(found, Optional.empty()), notes))
        .orElseGet(() -> new Opened.Refused<>(false, notes));
  }

  private static Opened<Week> judged(WeekReader.Week week, List<String> notes) {
    Optional<WeekPlan> plan = week.plan();
    if (plan.isEmpty()) {
      return new Opened.Ready<>(new Week(week.request(), Optional.empty()), notes);
    }
    WeekInspection inspection = new WeekInspector().inspect(plan.get());
    if (inspection instanceof WeekInspection.Passed passed) {
      return new Opened.Ready<>(new Week(week.request(), Optional.of(passed.week())), notes);
    }
    List<WeekFinding> findings = ((WeekInspection.Failed) inspection).findings();
    return new Opened.Refused<>(true, findings.stream().map(WeekFinding::sentence).toList());
  }

  /** Saves the plan; empty, or a sentence that says why it could not. */
  public static Optional<String> save(InspectedWeek week, Path file) {
    return SaveALoad.save(WeekWriter.bytes(week), file);
  }

  /** Saves the plan as iCalendar; empty, or a sentence that says why it could not. */
  public static Optional<String> calendar(InspectedWeek week, Path file) {
    return SaveALoad.save(WeekCalendar.bytes(week, Instant.now()), file);
  }

  /**
   * Saves the sheets of every firing that has a load, named after the firing.
   *
   * @param name what every file's name begins with
   * @return empty, or a sentence that says why the first that failed could not be saved
   */
  public static Optional<String> sheets(
      InspectedWeek week, Printing printing, Path folder, String name) {
    for (PlannedFiring firing : week.plan().firings()) {
      Optional<InspectedLoad> load = week.load(firing.id());
      Path file = folder.resolve(name + "-" + firing.id() + ".pdf");
      Optional<String> trouble =
          load.flatMap(one -> SaveALoad.sheets(LoadDrawing.of(one, printing), file));
      if (trouble.isPresent()) {
        return trouble;
      }
    }
    return Optional.empty();
  }
}
