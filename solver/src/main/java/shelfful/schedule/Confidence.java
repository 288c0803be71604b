package shelfful.schedule;

/**
 * How much more than loads were seen to hold is trusted to go in, in percent of that. A round that
 * can hardly better the best week trusts in more until it can: loads do come out fuller now and
 * then, and the last few units are found room for afterwards. What was enough once is begun with
 * later. May be used by several threads.
 */
final class Confidence {
  private static final int STEP = 5;

  /** With nothing fired yet. */
  private static final int MOST = 130;

  /** So much more for each firing made: then there is less that can still go wrong. */
  private static final int EACH = 2;

  private volatile int enough;

  /** With what a round begins that would trust in so much. */
  int first(int stretch) {
    return Math.max(stretch, enough - STEP);
  }

  /** More than so much, or as much where that is the most after so many firings. */
  int more(int stretch, int firings) {
    int most = MOST + EACH * firings;
    return Math.max(stretch, firings == 0 ? Math.min(stretch + STEP, most) : most);
  }

  /** Takes note of what was enough for a round to begin with. */
  void sufficed(int stretch) {
    enough = stretch;
  }
}
