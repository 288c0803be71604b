package shelfful.ui.week;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.measure.Cone;
import shelfful.review.InspectedWeek;
import shelfful.ui.DemoStudio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.OpenHours;
import shelfful.week.Pauses;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.Tariff;
import shelfful.week.WareLine;
import shelfful.week.WeekEffort;
import shelfful.week.WeekRequest;

/** Two weeks with a few firings in the two kilns of the demo pottery, planned once. */
public final class SmallWeek {
  /** A Monday. */
  static final LocalDateTime START = LocalDateTime.of(2026, 6, 1, 8, 0);

  private static Optional<InspectedWeek> planned = Optional.empty();

  private SmallWeek() {}

  /** A week that breaks no rule. */
  public static synchronized InspectedWeek planned() {
    if (planned.isEmpty()) {
      planned = new PlanAWeek(request()).run(WeekListener.none());
    }
    return planned.orElseThrow();
  }

  static WeekRequest request() {
    Span broken =
        new Span(LocalDateTime.of(2026, 6, 10, 0, 0), LocalDateTime.of(2026, 6, 11, 0, 0));
    return new WeekRequest(
        DemoStudio.studio(),
        START,
        LocalDate.of(2026, 6, 14),
        List.of(
            line("A1", "mug", 60, Stage.GLAZED, "2026-06-02", "J1"),
            line("A2", "bowl-large", 12, Stage.GLAZED, "2026-06-12", "J2"),
            line("A3", "tumbler", 30, Stage.BONE_DRY, "2026-06-09", "J3"),
            line("A4", "dinner-plate", 8, Stage.GLAZED, "2026-06-12", "J1")),
        List.of(kiln("round-top", List.of()), kiln("front", List.of(broken))),
        new Pauses(6, 1),
        Optional.of(new Tariff(0.32, "EUR")),
        new TreeSet<>(),
        List.of(),
        List.of(),
        new WeekEffort(1, 0, 0));
  }

  private static WareLine line(
      String id, String form, int quantity, Stage stage, String due, String order) {
    return new WareLine(
        new Batch(
            id,
            form,
            Optional.of("clear-gloss"),
            quantity,
            stage,
            Optional.empty(),
            false,
            1,
            Optional.of(LocalDate.parse(due)),
            Optional.of(order),
            Optional.empty(),
            LidPlace.ON),
        Optional.empty(),
        Optional.empty());
  }

  private static KilnWork kiln(String id, List<Span> broken) {
    Map<DayOfWeek, OpenHours> hours = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day != DayOfWeek.SUNDAY) {
        hours.put(day, new OpenHours(LocalTime.of(8, 0), LocalTime.of(17, 0)));
      }
    }
    return new KilnWork(
        id,
        new KilnCalendar(hours, new TreeSet<>(), broken),
        OptionalDouble.of(11.5),
        List.of(
            program("bisque-04", FiringKind.BISQUE, "04", 14),
            program("glaze-6", FiringKind.GLAZE, "6", 9)));
  }

  private static Program program(String id, FiringKind kind, String cone, int up) {
    return new Program(
        id,
        kind,
        new Cone(cone),
        0,
        Atmosphere.OXIDATION,
        Duration.ZERO,
        Duration.ofHours(up),
        Duration.ofHours(16),
        Duration.ofHours(2),
        Duration.ofHours(1),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }
}
