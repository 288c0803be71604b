package shelfful.review;

import shelfful.review.WeekFinding.Severity;

/** Every rule of a week by the id it has in docs/rules.md, where its exact meaning stands. */
public enum WeekRule {
  FIRING_NOT_KNOWN("firingNotKnown", Severity.BREAKS),
  FIRING_TIMES_WRONG("firingTimesWrong", Severity.BREAKS),
  FIRING_OUTSIDE_WEEK("firingOutsideWeek", Severity.BREAKS),
  KILN_NOT_TENDED("kilnNotTended", Severity.BREAKS),
  KILN_OUT_OF_ORDER("kilnOutOfOrder", Severity.BREAKS),
  FIRINGS_OVERLAP("firingsOverlap", Severity.BREAKS),
  LOAD_BREAKS_RULES("loadBreaksRules", Severity.BREAKS),
  LOAD_NOT_AS_PLANNED("loadNotAsPlanned", Severity.BREAKS),
  PIECE_UNKNOWN("pieceUnknown", Severity.BREAKS),
  PIECE_FIRED_NEEDLESSLY("pieceFiredNeedlessly", Severity.BREAKS),
  PIECE_NOT_READY("pieceNotReady", Severity.BREAKS),
  PIECE_NOT_BISQUED("pieceNotBisqued", Severity.BREAKS),
  PIECE_UNACCOUNTED_FOR("pieceUnaccountedFor", Severity.BREAKS),
  WAITING_WITHOUT_CAUSE("waitingWithoutCause", Severity.BREAKS),
  HELD_FIRING_CHANGED("heldFiringChanged", Severity.BREAKS),
  LATENESS_WRONG("latenessWrong", Severity.BREAKS),
  ORDER_NOT_TOGETHER("orderNotTogether", Severity.WISH);

  private final String id;
  private final Severity severity;

  WeekRule(String id, Severity severity) {
    this.id = id;
    this.severity = severity;
  }

  /** The id as it stands in docs/rules.md and in a {@link WeekFinding}. */
  public String id() {
    return id;
  }

  /** Whether a week that breaks it may be used all the same. */
  public Severity severity() {
    return severity;
  }
}
