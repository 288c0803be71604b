package shelfful.figures;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shelfful.record.UnpackedFiring;

/**
 * The figures of all firings kept.
 *
 * @param firings in the order of their days
 * @param causes the commonest first
 */
public record PotteryFigures(List<FiringFigures> firings, List<CauseCount> causes) {
  /** Takes its own copies. */
  public PotteryFigures {
    firings = List.copyOf(firings);
    causes = List.copyOf(causes);
  }

  /** Reckons them. */
  public static PotteryFigures of(List<UnpackedFiring> firings, FiringPrices prices) {
    List<FiringFigures> figures =
        firings.stream()
            .map(firing -> FiringFigures.of(firing, prices))
            .sorted(Comparator.comparing(FiringFigures::day).thenComparing(FiringFigures::firingId))
            .toList();
    return new PotteryFigures(figures, CauseCount.of(firings));
  }

  /** The headings of {@link #firingRows}. */
  public static List<String> firingHeadings() {
    return List.of(
        "firing",
        "day",
        "pieces",
        "limit",
        "fill",
        "good",
        "seconds",
        "lost",
        "kwh",
        "cost",
        "cost_per_piece");
  }

  /** One row for each firing; what is not known is empty. */
  public List<List<String>> firingRows() {
    return firings.stream()
        .map(
            one ->
                List.of(
                    one.firingId(),
                    one.day().toString(),
                    Integer.toString(one.pieces()),
                    one.limit().map(Object::toString).orElse(""),
                    text(one.fill(), "%.3f"),
                    Integer.toString(one.good()),
                    Integer.toString(one.seconds()),
                    Integer.toString(one.lost()),
                    text(one.kilowattHours(), "%.1f"),
                    text(one.cost(), "%.2f"),
                    text(one.costPerPiece(), "%.3f")))
        .toList();
  }

  /** The headings of {@link #causeRows}. */
  public static List<String> causeHeadings() {
    return List.of("cause", "seconds", "lost");
  }

  /** One row for each cause. */
  public List<List<String>> causeRows() {
    return causes.stream()
        .map(
            one ->
                List.of(one.cause(), Integer.toString(one.seconds()), Integer.toString(one.lost())))
        .toList();
  }

  private static String text(OptionalDouble value, String format) {
    return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "";
  }
}
