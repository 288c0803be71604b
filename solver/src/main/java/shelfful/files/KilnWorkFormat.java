package shelfful.files;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import shelfful.kiln.Kiln;
import shelfful.studio.Studio;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.OpenHours;
import shelfful.week.Program;
import shelfful.week.Span;

/** A kiln at work: its calendar, power and programs. */
final class KilnWorkFormat {
  private KilnWorkFormat() {}

  static Optional<KilnWork> read(FieldReader fields, Studio studio) {
    String kiln = fields.id("kiln");
    OptionalDouble kilowatts = ProgramFormat.number(fields, "kilowatts");
    Map<DayOfWeek, OpenHours> hours =
        fields.object("hours", KilnWorkFormat::hours).orElse(Map.of());
    List<LocalDate> closed = fields.optionalValues("closed", FileValue::day);
    List<Span> outOfOrder = fields.optionalObjects("outOfOrder", SpanFormat::read);
    List<Program> programs = fields.objects("programs", ProgramFormat::read);
    List<String> kilns = studio.kilns().stream().map(Kiln::id).toList();
    if (!kiln.equals(FieldReader.NO_ID) && !kilns.contains(kiln)) {
      fields.fault(
          "kiln",
          "The studio has no kiln " + Shown.quoted(kiln) + ".",
          NearMiss.advice(kiln, kilns));
    }
    return fields.make(
        () ->
            new KilnWork(
                kiln,
                new KilnCalendar(hours, new TreeSet<>(closed), outOfOrder),
                kilowatts,
                programs));
  }

  private static Optional<Map<DayOfWeek, OpenHours>> hours(FieldReader fields) {
    Map<DayOfWeek, OpenHours> hours = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      fields.optional(word(day), TimeText::open).ifPresent(open -> hours.put(day, open));
    }
    return fields.make(() -> hours);
  }

  private static String word(DayOfWeek day) {
    return day.name().toLowerCase(Locale.ROOT);
  }

  static void write(KilnWork work, FieldWriter fields) {
    fields
        .text("kiln", work.kilnId())
        .number("kilowatts", work.kilowatts())
        .object("hours", work.calendar().hours(), KilnWorkFormat::write)
        .texts("closed", work.calendar().closed().stream().map(LocalDate::toString).toList())
        .objects("outOfOrder", work.calendar().outOfOrder(), SpanFormat::write)
        .objects("programs", work.programs(), ProgramFormat::write);
  }

  private static void write(Map<DayOfWeek, OpenHours> hours, FieldWriter fields) {
    hours.forEach((day, open) -> fields.text(word(day), TimeText.open(open)));
  }
}
