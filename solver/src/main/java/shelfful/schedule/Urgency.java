package shelfful.schedule;

import shelfful.ware.FiringKind;

/** What given to a turn would be late, or find no firing, if it went into a later one. */
final class Urgency {
  private final Reckoning found;
  private final Turn turn;

  Urgency(Reckoning found, Turn turn) {
    this.found = found;
    this.turn = turn;
  }

  /** What is bisqued is always urgent: its glaze firing waits for it. */
  boolean isUrgent(Share share) {
    if (share.kind() == FiringKind.BISQUE) {
      return true;
    }
    long next = nextUnpacked(share);
    return next < 0 || share.wanted() < found.board().clock().day(next);
  }

  /** When the next firing that takes it is unpacked; −1 when there is none. */
  private long nextUnpacked(Share share) {
    long loads = found.times(turn.index()).loads();
    long next = -1;
    for (Turn other : found.board().turns()) {
      Turnaround times = found.times(other.index());
      boolean later = times != null && other != turn && times.loads() >= loads;
      if (later && share.fits(found.program(other.index())) && !found.board().isHeld(other)) {
        next = next < 0 ? times.unpacked() : Math.min(next, times.unpacked());
      }
    }
    return next;
  }
}
