package shelfful.planning;

/**
 * What may still be used, and what is in the load: the second decides who may not come in any more.
 */
final class Pool {
  private final int[] free;
  private final int[] placed;
  private final Shares shares;
  private final int[] left;

  private Pool(int[] free, int[] placed, Shares shares, int[] left) {
    this.free = free;
    this.placed = placed;
    this.shares = shares;
    this.left = left;
  }

  /** All that a sketch leaves. */
  static Pool of(Sketch sketch, ReadyWare ware) {
    int[] placed = sketch.placed();
    int[] pieces = ware.shares().pieces(placed);
    int[] left = new int[placed.length];
    for (Lot lot : ware.singles()) {
      left[lot.index()] = lot.size() - pieces[lot.index()];
    }
    if (!ware.shares().isAnything()) {
      return new Pool(left, placed, null, null);
    }
    Pool pool = new Pool(new int[placed.length], placed, ware.shares(), left);
    pool.count();
    return pool;
  }

  /** So many of each lot and no more, however else the pieces could be set. */
  static Pool just(int[] free, int[] placed) {
    return new Pool(free, placed, null, null);
  }

  /** By lot, how many more bodies can be made. */
  int[] free() {
    return free;
  }

  /** By lot, how many bodies are in the whole load. */
  int[] placed() {
    return placed;
  }

  void take(int lot, int count) {
    placed[lot] += count;
    if (shares == null) {
      free[lot] -= count;
    } else {
      shares.use(left, lot, count);
      count();
    }
  }

  private void count() {
    for (int lot = 0; lot < free.length; lot++) {
      free[lot] = shares.most(left, lot);
    }
  }

  /** The same to try things out with. */
  Trial trial() {
    return new Trial();
  }

  /** Counts how many bodies can be made while some are taken, without taking them. */
  final class Trial {
    private final int[] over = shares == null ? free.clone() : left.clone();

    int most(int lot) {
      return shares == null ? over[lot] : shares.most(over, lot);
    }

    void take(int lot, int count) {
      if (shares == null) {
        over[lot] -= count;
      } else {
        shares.use(over, lot, count);
      }
    }
  }
}
