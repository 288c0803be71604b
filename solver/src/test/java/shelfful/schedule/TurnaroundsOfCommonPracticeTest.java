package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.week.FiringTimes;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.WeekRequest;

/**
 * How many firings a kiln can do in a week. A slow bisque takes about 24 h up and 16 h down, a
 * glaze firing about 9 h up and 16 h down (common practice, no source); loading is taken as two
 * hours and unpacking as one.
 */
class TurnaroundsOfCommonPracticeTest {

  private static List<FiringTimes> oneAfterAnother(KilnCalendar calendar, Program program) {
    KilnWork kiln = Weeks.kiln("K1", calendar);
    WeekRequest week = Weeks.week(14, List.of(kiln), List.of());
    List<FiringTimes> all = new ArrayList<>();
    Optional<FiringTimes> next = FiringClock.next(week, kiln, program, Weeks.START);
    while (next.isPresent()) {
      all.add(next.get());
      next = FiringClock.next(week, kiln, program, next.get().unpacked());
    }
    return all;
  }

  private static long unpackedIn(List<FiringTimes> firings, Duration time) {
    return firings.stream()
        .filter(firing -> !firing.unpacked().isAfter(Weeks.START.plus(time)))
        .count();
  }

  @Test
  void aKilnTendedAtAllHoursDoesThreeSlowBisquesOrFiveGlazeFiringsAWeek() {
    // By hand: 2 + 24 + 16 + 1 = 43 h, and 168 / 43 = 3.9. Loading lies within one day, so the
    // third
    // is loaded at midnight rather than at ten in the evening, and is empty on Saturday at seven.
    Duration week = Duration.ofDays(7);
    List<FiringTimes> bisque = oneAfterAnother(Weeks.always(), Weeks.bisque());
    List<FiringTimes> glaze = oneAfterAnother(Weeks.always(), Weeks.glaze());

    assertThat(unpackedIn(bisque, week)).isEqualTo(3);
    assertThat(bisque.get(2).unpacked()).isEqualTo(Weeks.START.plusDays(5).withHour(19));
    // By hand: 2 + 9 + 16 + 1 = 28 h, and 168 / 28 = 6 to the hour, but for the hour lost when the
    // fourth is cold at eleven in the evening: the sixth is empty an hour after the week.
    assertThat(unpackedIn(glaze, week)).isEqualTo(5);
    assertThat(glaze.get(5).unpacked()).isEqualTo(Weeks.START.plusDays(7).plusHours(1));
  }

  @Test
  void inWorkingHoursAKilnIsLoadedThreeTimesAWeekForBisqueAndFourTimesForGlaze() {
    List<FiringTimes> bisque = oneAfterAnother(Weeks.weekdays(), Weeks.bisque());
    List<FiringTimes> glaze = oneAfterAnother(Weeks.weekdays(), Weeks.glaze());

    // By hand: loaded Monday 8, lit 10, cold Wednesday 2, unpacked 8 to 9, loaded again, cold
    // Friday
    // 3, unpacked 8 to 9, loaded, cold on Sunday, unpacked on Monday.
    assertThat(loadedInFirstWeek(bisque))
        .containsExactly(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY);
    assertThat(bisque.get(2).unpacks()).isEqualTo(Weeks.START.plusDays(7));
    // Loaded Monday 8, cold Tuesday 11, unpacked by 12; loaded by 14, cold Wednesday 15, unpacked
    // by
    // 16, too late to load; loaded Thursday 8, cold Friday 11; loaded Friday 12, unpacked Monday.
    assertThat(loadedInFirstWeek(glaze))
        .containsExactly(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);
  }

  private static List<DayOfWeek> loadedInFirstWeek(List<FiringTimes> firings) {
    LocalDate end = Weeks.START.toLocalDate().plusDays(7);
    return firings.stream()
        .map(firing -> firing.loads().toLocalDate())
        .filter(day -> day.isBefore(end))
        .map(LocalDate::getDayOfWeek)
        .toList();
  }

  @Test
  void aFiringWaitsUntilItNeitherMeetsARepairNorADayOff() {
    LocalDateTime wednesday = Weeks.START.plusDays(2);
    KilnCalendar repair =
        Weeks.weekdays().without(new Span(wednesday.withHour(0), wednesday.withHour(12)));

    FiringTimes first = oneAfterAnother(repair, Weeks.bisque()).get(0);

    assertThat(first.loads()).isEqualTo(wednesday.withHour(12));
    assertThat(first.unpacks()).isEqualTo(wednesday.plusDays(2).withHour(8));
  }
}
