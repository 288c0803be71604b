package shelfful.week;

import shelfful.ware.FiringKind;

/**
 * Pieces that miss a firing within the week, and why.
 *
 * @param portion the pieces
 * @param kind the first firing they miss
 * @param reason from the closed list
 * @param sentence the reason for people
 * @param mend one thing that would help, for people
 */
public record Waiting(
    Portion portion, FiringKind kind, Reason reason, String sentence, String mend) {

  /** Why pieces can wait. */
  public enum Reason {
    /** No program of any kiln takes them: cone, atmosphere or kind. */
    NO_PROGRAM,
    /** They are ready too late to be unpacked by the last day. */
    READY_TOO_LATE,
    /** The load planner cannot stand them in any kiln. */
    CANNOT_STAND,
    /** Every firing they could have been in is full, or the days are. */
    NO_TURN,
    /** Planning was stopped by hand before they had their turn. */
    NOT_PLANNED
  }
}
