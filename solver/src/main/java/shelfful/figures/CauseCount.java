package shelfful.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/**
 * How many pieces were flawed for one cause.
 *
 * @param cause in the potter's words; {@code not said} where none was given
 * @param seconds flawed but usable
 * @param lost not usable
 */
public record CauseCount(String cause, int seconds, int lost) {

  /** Every cause of some firings, the commonest first, then by name. */
  public static List<CauseCount> of(List<UnpackedFiring> firings) {
    TreeMap<String, CauseCount> counts = new TreeMap<>();
    for (UnpackedFiring firing : firings) {
      firing.results().stream()
          .filter(one -> one.grade().isFlawed())
          .forEach(
              one ->
                  counts.merge(
                      one.cause().orElse("not said"), CauseCount.of(one), CauseCount::plus));
    }
    List<CauseCount> sorted = new ArrayList<>(counts.values());
    sorted.sort(Comparator.comparing(count -> -count.all()));
    return List.copyOf(sorted);
  }

  private static CauseCount of(PieceResult one) {
    boolean lost = one.grade() == Grade.LOST;
    return new CauseCount(one.cause().orElse("not said"), lost ? 0 : 1, lost ? 1 : 0);
  }

  private CauseCount plus(CauseCount other) {
    return new CauseCount(cause, seconds + other.seconds, lost + other.lost);
  }

  /** Seconds and lost together. */
  public int all() {
    return seconds + lost;
  }
}
