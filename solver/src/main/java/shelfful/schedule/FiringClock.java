package shelfful.schedule;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import shelfful.week.FiringTimes;
import shelfful.week.KilnWork;
import shelfful.week.Program;
import shelfful.week.WeekRequest;

/** When a firing takes place that is loaded at a given time. */
public final class FiringClock {
  private FiringClock() {}

  /**
   * The times of a firing that is loaded at a time somebody chose, whether or not anybody works
   * then; it is unpacked in the first working hours after it is cold. Empty when those are not
   * within the week.
   */
  public static Optional<FiringTimes> loadedAt(
      WeekRequest request, KilnWork work, Program program, LocalDateTime loads) {
    return times(request, work, program, loads, Timetable::loadedAt);
  }

  /**
   * The first firing of a program that working hours and an otherwise empty kiln allow, not loaded
   * before a time; empty when the week has none left.
   */
  public static Optional<FiringTimes> next(
      WeekRequest request, KilnWork work, Program program, LocalDateTime notBefore) {
    return times(request, work, program, notBefore, Timetable::next);
  }

  /** One of the questions that a timetable answers in minutes. */
  private interface Question {
    Optional<Turnaround> ask(Timetable table, KilnProgram program, long minute);
  }

  private static Optional<FiringTimes> times(
      WeekRequest request, KilnWork work, Program program, LocalDateTime time, Question question) {
    MinuteClock clock = new MinuteClock(request);
    Timetable table = new Timetable(request, work, List.of());
    KilnProgram inKiln = new KilnProgram(0, 0, work.kilnId(), program);
    return question
        .ask(table, inKiln, clock.minute(time))
        .map(turn -> FiringTimes.of(program, clock.time(turn.loads()), clock.time(turn.unpacks())));
  }
}
