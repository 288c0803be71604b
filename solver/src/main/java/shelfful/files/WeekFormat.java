package shelfful.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shelfful.studio.Studio;
import shelfful.week.KilnWork;
import shelfful.week.Pauses;
import shelfful.week.Tariff;
import shelfful.week.WareLine;
import shelfful.week.WeekEffort;
import shelfful.week.WeekRequest;

/** What is asked of a run of firings. */
final class WeekFormat {
  private static final LocalDateTime STAND_IN = LocalDate.EPOCH.atStartOfDay();
  private static final int MOST = 100_000;

  private WeekFormat() {}

  /** The request but for what is held, which a plan tells by its firings. */
  static Optional<WeekRequest> read(FieldReader fields) {
    LocalDateTime start = fields.required("start", TimeText::moment, STAND_IN);
    LocalDate lastDay = fields.required("lastDay", FileValue::day, start.toLocalDate());
    Pauses pauses =
        fields.optionalObject("pauses", WeekFormat::pauses).orElse(Pauses.COMMON_PRACTICE);
    Optional<Tariff> tariff = fields.optionalObject("tariff", WeekFormat::tariff);
    List<String> together =
        fields.optionalValues("together", node -> FieldReader.text(node).then(FileName::name));
    WeekEffort effort =
        fields.optionalObject("effort", WeekFormat::effort).orElse(new WeekEffort(1, 0, 0));
    Optional<Studio> studio = fields.object("studio", StudioFormat::read);
    // Without a studio no name in the rest can be checked.
    if (studio.isEmpty()) {
      return Optional.empty();
    }
    List<KilnWork> kilns =
        fields.objects("kilns", inner -> KilnWorkFormat.read(inner, studio.get()));
    List<WareLine> lines = lines(fields, studio.get());
    if (!fields.isStillGood()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new WeekRequest(
              studio.get(),
              start,
              lastDay,
              lines,
              kilns,
              pauses,
              tariff,
              new TreeSet<>(together),
              List.of(),
              List.of(),
              effort));
    } catch (IllegalArgumentException refused) {
      fields.fault("", refused.getMessage() + ".", "Change one of these figures.");
      return Optional.empty();
    }
  }

  private static List<WareLine> lines(FieldReader fields, Studio studio) {
    List<WareLine> lines = fields.objects("batches", inner -> WareLineFormat.read(inner, studio));
    BatchListCheck check = new BatchListCheck(fields.problems());
    lines.forEach(line -> check.add(line.batch(), fields.madeAt().pathOf(line)));
    Set<String> kept = new HashSet<>();
    check.kept().forEach(batch -> kept.add(batch.id()));
    return lines.stream().filter(line -> kept.contains(line.batch().id())).toList();
  }

  private static Optional<Pauses> pauses(FieldReader fields) {
    int drying = fields.whole("dryingDays", 0, MOST, Pauses.COMMON_PRACTICE.dryingDays());
    int glazing = fields.whole("glazingDays", 0, MOST, Pauses.COMMON_PRACTICE.glazingDays());
    return fields.make(() -> new Pauses(drying, glazing));
  }

  private static Optional<Tariff> tariff(FieldReader fields) {
    double price = fields.required("perKilowattHour", ProgramFormat::number, 0.0);
    String currency = fields.name("currency");
    return fields.make(() -> new Tariff(price, currency));
  }

  private static Optional<WeekEffort> effort(FieldReader fields) {
    long seed = fields.wholeLong("seed", Long.MIN_VALUE);
    int rounds = fields.whole("rounds", 0, MOST);
    int loadSteps = fields.whole("loadSteps", 0, MOST);
    return fields.make(() -> new WeekEffort(seed, rounds, loadSteps));
  }

  static void writeShort(WeekRequest asked, FieldWriter fields) {
    fields
        .text("start", TimeText.moment(asked.start()))
        .text("lastDay", asked.lastDay().toString())
        .object(
            "effort",
            asked.effort(),
            (effort, inner) ->
                inner
                    .whole("seed", effort.seed())
                    .whole("rounds", effort.rounds())
                    .whole("loadSteps", effort.loadSteps()))
        .object(
            "pauses",
            asked.pauses(),
            (pauses, inner) ->
                inner
                    .whole("dryingDays", pauses.dryingDays())
                    .whole("glazingDays", pauses.glazingDays()));
    asked
        .tariff()
        .ifPresent(
            tariff ->
                fields.object(
                    "tariff",
                    tariff,
                    (price, inner) ->
                        inner
                            .number("perKilowattHour", price.perKilowattHour())
                            .text("currency", price.currency())));
    fields
        .texts("together", asked.together())
        .objects("kilns", asked.kilns(), KilnWorkFormat::write);
  }

  static void writeLong(WeekRequest asked, FieldWriter fields) {
    fields
        .objects("batches", asked.lines(), WareLineFormat::write)
        .object("studio", asked.studio(), StudioFormat::write);
  }
}
