package shelfful.figures;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.record.Grade;
import shelfful.record.UnpackedFiring;

/**
 * The figures of one firing.
 *
 * @param firingId the firing
 * @param day it was begun
 * @param pieces how many were in
 * @param limit what no load of its list could exceed, where it was worked out
 * @param good pieces, of those looked at
 * @param seconds likewise
 * @param lost likewise
 * @param kilowattHours used, where the meter was read
 * @param cost of the firing, where it can be told
 */
public record FiringFigures(
    String firingId,
    LocalDate day,
    int pieces,
    Optional<Integer> limit,
    int good,
    int seconds,
    int lost,
    OptionalDouble kilowattHours,
    OptionalDouble cost) {

  /** The figures of a firing at some prices. */
  public static FiringFigures of(UnpackedFiring firing, FiringPrices prices) {
    OptionalDouble used = firing.record().course().kilowattHours();
    return new FiringFigures(
        firing.record().id(),
        firing.record().day(),
        firing.record().pieces().size(),
        firing.record().limit(),
        firing.count(Grade.GOOD),
        firing.count(Grade.SECOND),
        firing.count(Grade.LOST),
        used,
        prices.cost(used));
  }

  /** How much of the limit is in, from 0 to 1; empty where no limit is known. */
  public OptionalDouble fill() {
    return limit.isPresent() && limit.get() > 0
        ? OptionalDouble.of((double) pieces / limit.get())
        : OptionalDouble.empty();
  }

  /** What one piece cost that was in; empty where the cost is not known. */
  public OptionalDouble costPerPiece() {
    return cost.isPresent() && pieces > 0
        ? OptionalDouble.of(cost.getAsDouble() / pieces)
        : OptionalDouble.empty();
  }
}
