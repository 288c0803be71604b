package shelfful.ui.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.week.FiringTimes;

class CalendarLayoutTest {
  private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 6, 1, 0, 0);

  static CalendarPicture.Bar bar(String id, String kiln, LocalDateTime loads) {
    FiringTimes times =
        new FiringTimes(
            loads,
            loads.plusHours(2),
            loads.plusHours(11),
            loads.plusHours(27),
            loads.plusHours(48),
            loads.plusHours(49));
    return new CalendarPicture.Bar(
        id,
        kiln,
        times,
        List.of(new CalendarPicture.Line(List.of(id + " glaze", id), true)),
        false);
  }

  static CalendarPicture picture() {
    return new CalendarPicture(
        MONDAY,
        MONDAY.plusDays(7),
        List.of(
            new CalendarPicture.Row("one", "Kiln one", List.of(), List.of()),
            new CalendarPicture.Row("two", "Kiln two", List.of(), List.of())),
        List.of(
            bar("F1", "one", MONDAY.plusHours(8)),
            bar("F2", "two", MONDAY.plusDays(2).plusHours(8))));
  }

  private static CalendarLayout layout(double top) {
    return new CalendarLayout(
        picture(), TimeWindow.whole(MONDAY, MONDAY.plusDays(7), 1680), 12, top);
  }

  @Test
  void aBarReachesFromLoadingToEmpty() {
    CalendarLayout.Box box = layout(0).bar(picture().bars().get(0)).orElseThrow();
    assertThat(box.x()).isEqualTo(80);
    assertThat(box.width()).isEqualTo(490);
  }

  @Test
  void findsTheBarAndTheKilnUnderThePointer() {
    CalendarLayout layout = layout(0);
    for (CalendarPicture.Bar bar : picture().bars()) {
      CalendarLayout.Box box = layout.bar(bar).orElseThrow();
      assertThat(layout.barAt(box.x() + 1, box.y() + 1)).contains(bar);
      assertThat(layout.barAt(box.x() - 1, box.y() + 1)).isEmpty();
      assertThat(layout.kilnAt(box.y())).contains(bar.kilnId());
    }
    assertThat(layout.kilnAt(-50)).contains("one");
    assertThat(layout.kilnAt(1e6)).contains("two");
  }

  @Test
  void rowsMoveUpWhenScrolledAndTheHeaderTakesNoClicks() {
    CalendarLayout.Box before = layout(0).bar(picture().bars().get(1)).orElseThrow();
    CalendarLayout.Box after = layout(50).bar(picture().bars().get(1)).orElseThrow();
    assertThat(before.y() - after.y()).isEqualTo(50);
    CalendarLayout hidden = layout(layout(0).rowHeight());
    CalendarLayout.Box box = hidden.bar(picture().bars().get(0)).orElseThrow();
    assertThat(hidden.barAt(box.x() + 1, hidden.header() - 1)).isEmpty();
  }

  @Test
  void aBarOfAnUnknownKilnLiesNowhere() {
    assertThat(layout(0).bar(bar("F9", "three", MONDAY))).isEmpty();
  }
}
