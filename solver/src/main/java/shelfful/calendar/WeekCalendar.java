package shelfful.calendar;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.Transparency;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Date;
import java.util.Locale;
import java.util.stream.Collectors;
import shelfful.load.Firing;
import shelfful.review.InspectedWeek;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.WeekRequest;

/**
 * Writes a week as a calendar: for every firing an event while the kiln is busy, which leaves the
 * day free for other work, and one each for loading and unpacking, which do not.
 *
 * <p>Times are floating (RFC 5545, 3.3.5, form 1): local times of the studio, the same figures in
 * every time zone. Uids are made of the studio's name and the firing's id, so that a calendar that
 * reads the file again moves its events rather than adding new ones.
 */
public final class WeekCalendar {
  private static final String CAUTION =
      "Times are planned. Open the kiln when its maker's manual allows, whatever is written here.";

  private final InspectedWeek week;
  private final Instant stamp;
  private final ICalendar calendar = new ICalendar();

  private WeekCalendar(InspectedWeek week, Instant stamp) {
    this.week = week;
    this.stamp = stamp;
  }

  /**
   * The bytes of the file, in UTF-8.
   *
   * @param stamp when it is written, which the format asks for
   */
  public static byte[] bytes(InspectedWeek week, Instant stamp) {
    WeekCalendar writer = new WeekCalendar(week, stamp);
    writer.calendar.setProductId("-//Shelfful//Week//EN");
    week.plan().firings().forEach(writer::firing);
    return FoldedLines.bytes(Biweekly.write(writer.calendar).go());
  }

  private void firing(PlannedFiring firing) {
    String what = words(firing);
    VEvent busy = event(firing, "firing", firing.times().loads(), firing.times().unpacked());
    busy.setSummary(what);
    busy.setTransparency(Transparency.transparent());
    busy.setDescription(description(firing));
    VEvent load = event(firing, "load", firing.times().loads(), firing.times().lit());
    load.setSummary("Load: " + what);
    VEvent unpack = event(firing, "unpack", firing.times().unpacks(), firing.times().unpacked());
    unpack.setSummary("Unpack: " + what);
    unpack.setDescription(CAUTION);
  }

  private VEvent event(PlannedFiring firing, String part, LocalDateTime from, LocalDateTime to) {
    VEvent event = new VEvent();
    event.setUid(
        slug(week.plan().request().studio().name())
            + "-"
            + slug(firing.id())
            + "-"
            + part
            + "@shelfful");
    event.setDateTimeStamp(Date.from(stamp));
    event.setDateStart(date(from), true);
    event.setDateEnd(date(to), true);
    event.setLocation(kilnName(firing));
    calendar.getTimezoneInfo().setFloating(event.getDateStart(), true);
    calendar.getTimezoneInfo().setFloating(event.getDateEnd(), true);
    calendar.addEvent(event);
    return event;
  }

  private String words(PlannedFiring firing) {
    Firing asked = program(firing).in(firing.kilnId());
    return String.format(
        Locale.ROOT,
        "%s %s, cone %s, %s, %d pieces",
        firing.id(),
        asked.kind().name().toLowerCase(Locale.ROOT),
        asked.cone().number(),
        kilnName(firing),
        firing.pieces());
  }

  private String description(PlannedFiring firing) {
    String pieces =
        firing.portions().stream()
            .map(portion -> portion.size() + " of " + portion.batchId())
            .collect(Collectors.joining(", "));
    return String.join(
        "\n",
        "Loading " + firing.times().loads() + " to " + firing.times().lit(),
        "Heating until " + firing.times().hot() + ", cold at " + firing.times().cold(),
        "Unpacking " + firing.times().unpacks() + " to " + firing.times().unpacked(),
        "In it: " + (pieces.isEmpty() ? "nothing yet" : pieces),
        CAUTION);
  }

  private Program program(PlannedFiring firing) {
    WeekRequest request = week.plan().request();
    return request.program(firing).orElseThrow();
  }

  private String kilnName(PlannedFiring firing) {
    return week.plan().request().studio().kiln(firing.kilnId()).orElseThrow().name();
  }

  /** The library writes a floating time as the figures of its date in the computer's own zone. */
  private static Date date(LocalDateTime time) {
    return Date.from(time.atZone(ZoneId.systemDefault()).toInstant());
  }

  private static String slug(String text) {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return plain.replaceAll("^-|-$", "");
  }
}
