package shelfful.week;

import java.util.List;
import java.util.Optional;
import shelfful.load.Load;

/**
 * One firing of a week.
 *
 * @param id unique within a week; kept when the week is planned again and the firing stays much the
 *     same
 * @param kilnId where
 * @param programId how
 * @param times when
 * @param portions which pieces, in the order of the load's batches
 * @param load how they stand: it holds just these pieces and leaves none out; empty when nothing
 *     goes in
 * @param hold how much of it must stay when the week is planned again
 */
public record PlannedFiring(
    String id,
    String kilnId,
    String programId,
    FiringTimes times,
    List<Portion> portions,
    Optional<Load> load,
    Hold hold) {
  /** Takes its own copy; refuses a load without pieces and pieces without a load. */
  public PlannedFiring {
    portions = List.copyOf(portions);
    if (portions.isEmpty() == load.isPresent()) {
      throw new IllegalArgumentException(
          "The firing " + id + " must have both pieces and a load, or neither");
    }
  }

  /** The same firing with its pieces standing otherwise. */
  public PlannedFiring with(Optional<Load> otherLoad) {
    return new PlannedFiring(id, kilnId, programId, times, portions, otherLoad, hold);
  }

  /** How many pots and sets of pots go in, lids not counted. */
  public int pieces() {
    return portions.stream().mapToInt(Portion::size).sum();
  }

  /** Those of some firings that are held, wholly or in time. */
  public static List<PlannedFiring> held(List<PlannedFiring> firings) {
    return firings.stream().filter(firing -> firing.hold() != Hold.FREE).toList();
  }

  /** The same, held as much as said. */
  public PlannedFiring held(Hold how) {
    return new PlannedFiring(id, kilnId, programId, times, portions, load, how);
  }
}
