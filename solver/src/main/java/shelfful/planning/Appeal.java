package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How worthwhile lots and kinds look when a shelf is filled: worth for the room they take. Only a
 * guide for the order of trying.
 */
final class Appeal {
  /** A must-go piece comes before any number of others that one shelf can hold. */
  private static final double MUST_GO = 1000;

  /** How much of a shelf well-set ware covers, its gaps included: from many packings, about. */
  private static final double WELL_SET = 0.86;

  private final ReadyWare ware;
  private final double[] roomTaken;
  private final List<List<Lot>> lotsOfKind = new ArrayList<>();

  Appeal(ReadyWare ware, double[][] gaps) {
    this.ware = ware;
    this.roomTaken = roomTaken(ware.kinds(), gaps);
    for (WareKind kind : ware.kinds()) {
      lotsOfKind.add(
          ware.lots().stream()
              .filter(lot -> lot.kind().index() == kind.index())
              .sorted(Comparator.comparingDouble(Appeal::worth).reversed())
              .toList());
    }
  }

  /** What a piece of each kind covers with half its gap all round, in square millimetres. */
  static double[] roomTaken(List<WareKind> kinds, double[][] gaps) {
    double[] taken = new double[kinds.size()];
    for (WareKind kind : kinds) {
      double gap = gaps[kind.index()][kind.index()];
      double radius = Math.sqrt(kind.area() / Math.PI) + gap / 2 + kind.body().tolerance();
      taken[kind.index()] = Math.PI * radius * radius;
    }
    return taken;
  }

  static double worth(Lot lot) {
    return lot.mustGo() ? MUST_GO * lot.worth() : lot.worth();
  }

  double roomTaken(int kind) {
    return roomTaken[kind];
  }

  double roomTaken(int[] kindCounts) {
    double taken = 0;
    for (int kind = 0; kind < kindCounts.length; kind++) {
      taken += kindCounts[kind] * roomTaken[kind];
    }
    return taken;
  }

  /** The lot on a shelf that is worth least for its room, or −1 where nothing may leave it. */
  int leastAppealing(int[] lotCounts) {
    int least = -1;
    double lowest = Double.POSITIVE_INFINITY;
    for (Lot lot : ware.lots()) {
      if (lotCounts[lot.index()] > 0 && !lot.isKept() && perRoom(lot) < lowest) {
        least = lot.index();
        lowest = perRoom(lot);
      }
    }
    return least;
  }

  double perRoom(Lot lot) {
    return worth(lot) / roomTaken[lot.kind().index()];
  }

  /** Lots of a kind, the worthiest first. */
  List<Lot> lotsOfKind(int kind) {
    return lotsOfKind.get(kind);
  }

  /** How many more of a kind might go on a shelf of some area that already holds others. */
  int guess(int kind, double area, int[] kindCounts) {
    double left = area * WELL_SET - roomTaken(kindCounts);
    return Math.max(1, (int) (left / roomTaken[kind]));
  }

  /** The worth a shelf of some area may hold of what is free and no taller than a height. */
  double fill(double area, long height, Pool pool) {
    List<Lot> fitting =
        ware.lots().stream()
            .filter(lot -> pool.free()[lot.index()] > 0 && lot.height() <= height)
            .sorted(Comparator.comparingDouble(this::perRoom).reversed())
            .toList();
    double left = area * WELL_SET;
    double worth = 0;
    Pool.Trial trial = pool.trial();
    for (Lot lot : fitting) {
      double each = roomTaken[lot.kind().index()];
      double taken = Math.min(trial.most(lot.index()), left / each);
      trial.take(lot.index(), (int) Math.ceil(taken));
      worth += taken * worth(lot);
      left -= taken * each;
      if (left <= 0) {
        break;
      }
    }
    return worth;
  }
}
