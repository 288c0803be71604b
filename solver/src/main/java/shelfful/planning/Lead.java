package shelfful.planning;

/**
 * Which desk has the best load so far; tells the watch of every better one. May be used by several
 * threads.
 */
final class Lead {
  private final PlanWatch watch;
  private PlanDesk desk;
  private Merit best;

  Lead(PlanWatch watch) {
    this.watch = watch;
  }

  /** Looks at a desk's best load; hands it on when it beats all before. */
  synchronized void offer(PlanDesk candidate) {
    Merit merit = candidate.merit();
    if (best == null || merit.compareTo(best) > 0) {
      best = merit;
      desk = candidate;
      watch.better(candidate.asFound());
    }
  }

  synchronized PlanDesk desk() {
    return desk;
  }
}
