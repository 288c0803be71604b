package shelfful.ui.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shelfful.app.PlannedFiringFigures;
import shelfful.cost.Energy;
import shelfful.cost.FiringCost;
import shelfful.studio.Studio;
import shelfful.ui.calendar.CalendarPicture;
import shelfful.ui.words.Words;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.Tariff;
import shelfful.week.WeekPlan;

/** One firing in words. */
final class FiringWords {
  private final Words words;
  private final Moments moments;
  private final WeekPlan plan;
  private final PlannedFiring firing;
  private final PlannedFiringFigures figures;

  FiringWords(Words words, WeekPlan plan, PlannedFiring firing) {
    this.words = words;
    this.moments = new Moments(words);
    this.plan = plan;
    this.firing = firing;
    this.figures = PlannedFiringFigures.of(plan, firing);
  }

  private Program program() {
    return plan.request().program(firing).orElseThrow();
  }

  static String kiln(Studio studio, String kilnId) {
    return studio.kiln(kilnId).map(kiln -> kiln.name()).orElse(kilnId);
  }

  private String kind() {
    return words.of("weekKind", program().kind());
  }

  /** Id, kind and cone. */
  String title() {
    return words.of("week.title", firing.id(), kind(), program().cone().number());
  }

  /** What is written in its bar. */
  List<CalendarPicture.Line> lines() {
    return List.of(
        line(true, titles()),
        line(
            false,
            List.of(
                counts(),
                words.of("week.countsShort", figures.pieces(), percent()),
                words.of("week.piecesShort", figures.pieces()))),
        line(false, orders()),
        line(true, states()));
  }

  private List<String> titles() {
    String cone = program().cone().number();
    String letter = words.of("weekKindShort", program().kind());
    return List.of(
        title(),
        words.of("week.titleShort", firing.id(), kind(), cone),
        words.of("week.titleShortest", firing.id(), letter),
        firing.id());
  }

  /** That it is late comes before that it is held, which its edge says as well. */
  private List<String> states() {
    return figures.latePieces() == 0
        ? List.of(hold())
        : List.of(
            state(), late("week.lateShort"), late("week.lateShorter"), late("week.lateShortest"));
  }

  private static CalendarPicture.Line line(boolean strong, List<String> variants) {
    return new CalendarPicture.Line(variants, strong);
  }

  private long percent() {
    return Math.round(100 * figures.cover().orElse(0));
  }

  /** Pieces and how much of the shelves they cover. */
  private String counts() {
    return figures.cover().isPresent()
        ? words.of("week.counts", figures.pieces(), percent())
        : words.of("week.nothingIn");
  }

  /** All orders, then fewer and fewer with the number of the rest. */
  private List<String> orders() {
    List<String> all = figures.orders();
    List<String> variants = new ArrayList<>();
    for (int some = all.size(); some > 0; some--) {
      String named = all.stream().limit(some).collect(Collectors.joining(", "));
      int rest = all.size() - some;
      variants.add(rest == 0 ? named : words.of("week.ordersMore", named, rest));
    }
    return variants;
  }

  private String late(String key) {
    return figures.latePieces() == 0
        ? ""
        : words.of(key, figures.latePieces(), figures.mostDaysLate());
  }

  private String hold() {
    return firing.hold() == Hold.FREE ? "" : words.of("weekHold", firing.hold());
  }

  private String state() {
    return Stream.of(late("week.late"), hold())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** Kiln and times, for the list. */
  String when() {
    return words.of(
        "week.when",
        kiln(plan.request().studio(), firing.kilnId()),
        moments.moment(firing.times().loads()),
        moments.moment(firing.times().unpacked()));
  }

  /** Everything else, for the list. */
  String what() {
    List<String> parts = new ArrayList<>();
    parts.add(counts());
    if (!figures.orders().isEmpty()) {
      parts.add(words.of("week.orders", String.join(", ", figures.orders())));
    }
    parts.add(cost());
    parts.add(state());
    return parts.stream().filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
  }

  private String cost() {
    FiringCost cost = FiringCost.of(plan.request(), firing);
    Optional<Energy> energy = cost.energy();
    if (energy.isEmpty()) {
      return words.of("week.energyUnknown");
    }
    boolean estimated = energy.get().basis() == Energy.Basis.ESTIMATE;
    String kilowattHours =
        words.of(
            estimated ? "week.energyEstimate" : "week.energyMeter", energy.get().kilowattHours());
    return kilowattHours + money(cost.money());
  }

  private String money(OptionalDouble money) {
    String currency = plan.request().tariff().map(Tariff::currency).orElse("");
    return money.isPresent() ? words.of("week.andMoney", money.getAsDouble(), currency) : "";
  }

  /** When its parts are, in a sentence. */
  String phases() {
    return words.of(
        "week.phases",
        moments.moment(firing.times().lit()),
        moments.moment(firing.times().hot()),
        moments.moment(firing.times().cold()),
        moments.moment(firing.times().unpacks()));
  }
}
