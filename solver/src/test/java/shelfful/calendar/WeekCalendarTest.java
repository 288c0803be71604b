package shelfful.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.fixture.Weeks;
import shelfful.kiln.Kiln;
import shelfful.review.InspectedWeek;
import shelfful.studio.Studio;
import shelfful.ware.Stage;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekRequest;

/** The calendar file, read back by a library other than the one that writes it. */
class WeekCalendarTest {
  private static final Instant STAMP = Instant.parse("2026-05-31T10:00:00Z");
  private static final String HOSTILE = "Kiln; \"A\", back\\yard\nBEGIN:VEVENT ñ 窯";

  private static final DateTimeFormatter FORM =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

  private static InspectedWeek week;

  @BeforeAll
  static void plan() {
    WeekRequest plain =
        Weeks.week(
            10,
            List.of(Weeks.kiln("K1", Weeks.weekdays())),
            List.of(
                Weeks.ware("A", "basin", 3, Stage.BONE_DRY, "2026-06-09"),
                Weeks.ware("B", "drum", 2, Stage.GLAZED, "2026-06-03")));
    week = new PlanAWeek(named(plain)).run(WeekListener.none()).orElseThrow();
  }

  private static WeekRequest named(WeekRequest plain) {
    Studio s = plain.studio();
    Kiln k = s.kilns().get(0);
    Kiln hostile =
        new Kiln(
            k.id(), HOSTILE, k.loading(), k.chamber(), k.hottest(), k.keepOuts(), k.columnPlans());
    Studio studio =
        new Studio(
            "Pots & Sons, Ltd; \\o/",
            s.unit(),
            s.forms(),
            s.glazes(),
            List.of(hostile),
            s.shelves(),
            s.posts(),
            s.rules());
    return new WeekRequest(
        studio,
        plain.start(),
        plain.lastDay(),
        plain.lines(),
        plain.kilns(),
        plain.pauses(),
        plain.tariff(),
        plain.together(),
        plain.held(),
        plain.earlier(),
        plain.effort());
  }

  private static Map<String, VEvent> readBack(byte[] bytes) throws IOException, ParserException {
    Calendar calendar = new CalendarBuilder().build(new ByteArrayInputStream(bytes));
    calendar.validate();
    return calendar.<VEvent>getComponents(Component.VEVENT).stream()
        .collect(Collectors.toMap(e -> e.getUid().orElseThrow().getValue(), e -> e));
  }

  @Test
  void everyFiringIsThereWithItsTimesAsTheStudiosClockShowsThem() throws Exception {
    Map<String, VEvent> events = readBack(WeekCalendar.bytes(week, STAMP));

    assertThat(events).hasSize(3 * week.plan().firings().size());
    for (PlannedFiring firing : week.plan().firings()) {
      String uid = "pots-sons-ltd-o-" + firing.id().toLowerCase(Locale.ROOT);
      VEvent busy = events.get(uid + "-firing@shelfful");
      assertThat(start(busy)).isEqualTo(firing.times().loads());
      assertThat(end(busy)).isEqualTo(firing.times().unpacked());
      assertThat(start(events.get(uid + "-load@shelfful"))).isEqualTo(firing.times().loads());
      assertThat(end(events.get(uid + "-load@shelfful"))).isEqualTo(firing.times().lit());
      assertThat(start(events.get(uid + "-unpack@shelfful"))).isEqualTo(firing.times().unpacks());
    }
  }

  private static LocalDateTime start(VEvent event) {
    return time(event, "DTSTART");
  }

  private static LocalDateTime end(VEvent event) {
    return time(event, "DTEND");
  }

  private static LocalDateTime time(VEvent event, String name) {
    Property property = event.<Property>getProperty(name).orElseThrow();
    return LocalDateTime.parse(property.getValue(), FORM);
  }

  @Test
  void hostileNamesComeBackAsTheyWere() throws Exception {
    VEvent event = readBack(WeekCalendar.bytes(week, STAMP)).values().iterator().next();

    assertThat(event.getLocation().getValue()).isEqualTo(HOSTILE);
  }

  @Test
  void linesAreFoldedAndEndAsTheStandardSays() {
    String text = new String(WeekCalendar.bytes(week, STAMP), StandardCharsets.UTF_8);

    assertThat(text).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n");
    // RFC 5545, 3.1: lines should not be longer than 75 octets, without the line break.
    assertThat(text.split("\r\n"))
        .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 77);
    assertThat(text).doesNotContain("TZID").contains("DTSTAMP:20260531T100000Z");
  }

  @Test
  void theSameWeekGivesTheSameBytes() {
    assertThat(WeekCalendar.bytes(week, STAMP)).isEqualTo(WeekCalendar.bytes(week, STAMP));
  }
}
