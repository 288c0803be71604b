package shelfful.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Mondays from eight to five; 8 June 2026 is a Monday on which nobody works. */
class KilnCalendarTest {
  private static final OpenHours EIGHT_TO_FIVE =
      new OpenHours(LocalTime.of(8, 0), LocalTime.of(17, 0));
  private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
  private static final KilnCalendar CALENDAR =
      new KilnCalendar(
          Map.of(DayOfWeek.MONDAY, EIGHT_TO_FIVE),
          new TreeSet<>(List.of(MONDAY.plusWeeks(1))),
          List.of());

  private static boolean isTended(LocalDate day, int from, int to) {
    return CALENDAR.isTended(new Span(day.atTime(from, 0), day.atTime(to, 0)));
  }

  @Test
  void isOpenOnItsDaysOfTheWeekButNotOnClosedOnes() {
    assertThat(CALENDAR.open(MONDAY)).contains(EIGHT_TO_FIVE);
    assertThat(CALENDAR.open(MONDAY.plusDays(1))).isEmpty();
    assertThat(CALENDAR.open(MONDAY.plusWeeks(1))).isEmpty();
    assertThat(CALENDAR.open(MONDAY.plusWeeks(2))).contains(EIGHT_TO_FIVE);
  }

  @Test
  void isTendedFromTheFirstMinuteToTheLastOfOneDay() {
    assertThat(isTended(MONDAY, 8, 17)).isTrue();
    assertThat(isTended(MONDAY, 7, 9)).isFalse();
    assertThat(isTended(MONDAY, 16, 18)).isFalse();
    assertThat(isTended(MONDAY.plusDays(1), 9, 10)).isFalse();
    assertThat(isTended(MONDAY.plusWeeks(1), 9, 10)).isFalse();
    Span overnight = new Span(MONDAY.atTime(16, 0), MONDAY.plusDays(1).atTime(9, 0));
    assertThat(CALENDAR.isTended(overnight)).isFalse();
  }
}
