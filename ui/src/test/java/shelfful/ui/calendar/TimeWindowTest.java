package shelfful.ui.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.week.Span;

class TimeWindowTest {
  private static final LocalDateTime FROM = LocalDateTime.of(2026, 6, 1, 0, 0);
  private static final LocalDateTime TO = LocalDateTime.of(2026, 6, 29, 0, 0);

  private static TimeWindow whole() {
    return TimeWindow.whole(FROM, TO, 1120);
  }

  @Test
  void theWholeMonthLiesFromEdgeToEdge() {
    assertThat(whole().perDay()).isEqualTo(40);
    assertThat(whole().x(FROM)).isZero();
    assertThat(whole().x(TO)).isEqualTo(1120);
    assertThat(whole().x(FROM.plusDays(7).plusHours(12))).isEqualTo(300);
  }

  @Test
  void aMomentAndItsPixelAreTheSameThing() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 1000; i++) {
      TimeWindow window = whole().zoomed(1 + 20 * random.nextDouble(), 1120 * random.nextDouble());
      LocalDateTime time = FROM.plusMinutes(random.nextInt(28 * 24 * 60));
      assertThat(window.time(window.x(time))).isEqualTo(time);
    }
  }

  @Test
  void zoomingKeepsTheMomentUnderThePointer() {
    TimeWindow near = whole().zoomed(4, 560);
    assertThat(near.time(560)).isEqualTo(whole().time(560));
    assertThat(near.perDay()).isEqualTo(160);
  }

  @Test
  void neverLooksPastEitherEnd() {
    assertThat(whole().zoomed(0.1, 300)).isEqualTo(whole());
    assertThat(whole().zoomed(4, 0).scrolled(-500).left()).isZero();
    TimeWindow end = whole().zoomed(4, 0).scrolled(1e9);
    assertThat(end.x(TO)).isCloseTo(1120, within(1e-6));
    assertThat(whole().zoomed(1e9, 0).perDay()).isEqualTo(TimeWindow.WIDEST);
  }

  @Test
  void showsSevenDaysWhenAskedForAWeek() {
    TimeWindow week = whole().ofDays(7);
    assertThat(week.time(1120)).isEqualTo(FROM.plusDays(7));
  }

  @Test
  void fewerHoursThanCanBeShownBeginWithTheSameMoment() {
    TimeWindow third = whole().ofDays(7).scrolled(3 * 160);
    assertThat(third.ofDays(0.1).perDay()).isEqualTo(TimeWindow.WIDEST);
    assertThat(third.ofDays(0.1).time(0)).isEqualTo(FROM.plusDays(3));
  }

  @Test
  void scrollsNoFurtherThanASpanNeeds() {
    TimeWindow week = whole().ofDays(7);
    Span later = new Span(FROM.plusDays(8), FROM.plusDays(9));
    assertThat(week.showing(later).x(later.to())).isCloseTo(1120, within(1e-6));
    Span seen = new Span(FROM.plusDays(2), FROM.plusDays(3));
    assertThat(week.showing(seen)).isEqualTo(week);
    assertThat(week.showing(later).showing(seen).x(seen.from())).isCloseTo(0, within(1e-6));
  }

  @Test
  void aWiderWindowShowsMore() {
    TimeWindow wider = whole().ofDays(7).wide(2240);
    assertThat(wider.perDay()).isEqualTo(160);
    assertThat(wider.time(2240)).isEqualTo(FROM.plusDays(14));
  }
}
