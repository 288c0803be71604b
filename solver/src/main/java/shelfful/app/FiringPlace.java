package shelfful.app;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import shelfful.week.FiringTimes;

/**
 * Where a firing would stand if it were loaded near a wished time.
 *
 * @param firingId the firing
 * @param kilnId the kiln it would be in
 * @param programId the program of that kiln; empty text when it has none that would do
 * @param times when; empty when there is no time for it
 * @param hindrances everything that forbids it or would have to give way, the forbidding ones first
 */
public record FiringPlace(
    String firingId,
    String kilnId,
    String programId,
    Optional<FiringTimes> times,
    List<Hindrance> hindrances) {
  /** Takes its own copy. */
  public FiringPlace {
    hindrances = List.copyOf(hindrances);
  }

  /** Whether it may stand there. */
  public boolean isAllowed() {
    return times.isPresent() && hindrances.stream().noneMatch(one -> one.kind().forbids());
  }

  /** What stands in the way. */
  public enum Kind {
    /** The kiln has no program of this kind, cone and atmosphere. */
    NO_PROGRAM(true),
    /** It would be loaded before the week begins, which is {@code to}. */
    BEFORE_THE_WEEK(true),
    /** It could not be unpacked by the end of the week, which is {@code to}. */
    AFTER_THE_WEEK(true),
    /** The kiln is out of order from {@code from} to {@code to}. */
    OUT_OF_ORDER(true),
    /** A held firing called {@code name} is in the kiln from {@code from} to {@code to}. */
    HELD_IN_THE_WAY(true),
    /** Another firing, which can be moved, is in the kiln then. */
    FIRING_IN_THE_WAY(false),
    /** So many pieces are not ready at {@code from}; the last of them is at {@code to}. */
    WARE_NOT_READY(false),
    /** So many pieces would come too late for the firing {@code name}, loaded at {@code to}. */
    TOO_LATE_FOR_THE_NEXT(false),
    /** Nobody works at {@code from}; it was moved to {@code to}. */
    MOVED_INTO_HOURS(false);

    private final boolean forbids;

    Kind(boolean forbids) {
      this.forbids = forbids;
    }

    /** Whether the firing cannot stand there at all. */
    public boolean forbids() {
      return forbids;
    }
  }

  /**
   * One thing in the way. Which of the figures mean something depends on the kind.
   *
   * @param kind what it is
   * @param name of the other firing or of the kiln
   * @param pieces how many
   * @param from see the kind
   * @param to see the kind
   */
  public record Hindrance(
      Kind kind, String name, int pieces, LocalDateTime from, LocalDateTime to) {}
}
