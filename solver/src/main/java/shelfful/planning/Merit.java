package shelfful.planning;

import java.util.Comparator;

/**
 * How good a sketch is, to choose between column plans: nothing broken, must-go pieces, worth,
 * fewest layers.
 *
 * @param broken rules broken
 * @param mustGoWaiting must-go pieces that wait
 * @param worth points of the pieces that are in
 * @param layers shelves used
 */
record Merit(int broken, int mustGoWaiting, long worth, int layers) implements Comparable<Merit> {
  private static final Comparator<Merit> BEST_LAST =
      Comparator.comparingInt((Merit merit) -> -merit.broken)
          .thenComparingInt(merit -> -merit.mustGoWaiting)
          .thenComparingLong(Merit::worth)
          .thenComparingInt(merit -> -merit.layers);

  static Merit of(Sketch sketch, SketchJudge judge) {
    int[] placed = sketch.placed();
    int waiting = 0;
    long worth = 0;
    int[] pieces = judge.ware().shares().pieces(placed);
    for (Lot lot : judge.ware().singles()) {
      waiting += lot.mustGo() ? lot.size() - pieces[lot.index()] : 0;
    }
    for (Lot lot : judge.ware().lots()) {
      worth += placed[lot.index()] * lot.worth();
    }
    int layers = 0;
    for (Spot spot : judge.stand().spots()) {
      layers += sketch.levels(spot.column()) * judge.stand().shelvesAt(spot);
    }
    return new Merit(judge.judge(sketch).broken(), waiting, worth, layers);
  }

  /**
   * Whether more search may well turn it round: as little broken or waiting, worth nearly as much.
   *
   * @param least share of the other's worth that is nearly as much
   */
  boolean isNearly(Merit best, double least) {
    return broken == best.broken
        && mustGoWaiting <= best.mustGoWaiting
        && worth >= least * best.worth;
  }

  @Override
  public int compareTo(Merit other) {
    return BEST_LAST.compare(this, other);
  }
}
