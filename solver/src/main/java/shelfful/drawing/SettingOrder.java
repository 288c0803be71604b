package shelfful.drawing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import shelfful.kiln.Loading;

/**
 * The order pieces of a layer are set in: far rows first and left to right in a row, but never a
 * piece after one that bars its way in (see {@link WayIn}), and after one that hampers it only
 * where every piece left would be. A row is every piece whose axis lies no more than half the depth
 * of its farthest piece in front of that piece's axis.
 *
 * <p>Bodies that are round at every height never bar each other in a circle; where handles or
 * turned ovals do, the piece with the fewest others before it comes next.
 */
final class SettingOrder {
  private static final Comparator<SetPiece> FARTHEST_FIRST =
      Comparator.comparingDouble((SetPiece piece) -> -piece.y())
          .thenComparingDouble(SetPiece::x)
          .thenComparing(piece -> piece.piece().id());

  private static final Comparator<SetPiece> LEFT_TO_RIGHT =
      Comparator.comparingDouble(SetPiece::x).thenComparing(FARTHEST_FIRST);

  private final List<SetPiece> rows;
  private final List<BitSet> barredBy = new ArrayList<>();
  private final List<BitSet> hamperedBy = new ArrayList<>();

  private SettingOrder(List<SetPiece> rows, Loading loading) {
    this.rows = rows;
    List<WayIn.Parts> parts = rows.stream().map(WayIn.Parts::of).toList();
    for (int i = 0; i < rows.size(); i++) {
      BitSet first = new BitSet();
      BitSet rather = new BitSet();
      for (int j = 0; j < rows.size(); j++) {
        if (i != j) {
          // Whether i, once it stood, would be in the way of j: then j comes first.
          WayIn way = WayIn.past(parts.get(i), parts.get(j), loading);
          first.set(j, way.isBarred());
          rather.set(j, way.isHampered());
        }
      }
      barredBy.add(first);
      hamperedBy.add(rather);
    }
    leaveOutMutual();
  }

  /** Of two that bar each other none can be set straight after the other: no order is better. */
  private void leaveOutMutual() {
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (barredBy.get(i).get(j) && barredBy.get(j).get(i)) {
          barredBy.get(i).clear(j);
          barredBy.get(j).clear(i);
        }
      }
    }
  }

  /** The pieces numbered from 1. The same pieces in any order get the same numbers. */
  static List<SetPiece> number(List<SetPiece> pieces, Loading loading) {
    return new SettingOrder(inRows(pieces), loading).numbered();
  }

  private List<SetPiece> numbered() {
    BitSet waiting = new BitSet();
    waiting.set(0, rows.size());
    List<SetPiece> numbered = new ArrayList<>();
    while (!waiting.isEmpty()) {
      int next = next(waiting);
      waiting.clear(next);
      numbered.add(rows.get(next).numbered(numbered.size() + 1));
    }
    return List.copyOf(numbered);
  }

  /**
   * The piece with the fewest before it that still wait; the first in its row of those. Where some
   * bar each other in a ring, only pieces of a ring that nothing outside it bars come next.
   */
  private int next(BitSet waiting) {
    boolean anyFree = waiting.stream().anyMatch(i -> count(barredBy.get(i), waiting) == 0);
    BitSet coming = anyFree ? waiting : inFreeRings(waiting);
    int best = -1;
    long fewest = Long.MAX_VALUE;
    for (int i = coming.nextSetBit(0); i >= 0 && fewest > 0; i = coming.nextSetBit(i + 1)) {
      long before = (long) rows.size() * count(barredBy.get(i), waiting);
      before += count(hamperedBy.get(i), waiting);
      if (before < fewest) {
        fewest = before;
        best = i;
      }
    }
    return best;
  }

  /** Those before which, step by step, only such pieces come as they come before themselves. */
  private BitSet inFreeRings(BitSet waiting) {
    List<BitSet> allBefore = new ArrayList<>();
    for (BitSet before : barredBy) {
      BitSet here = (BitSet) before.clone();
      here.and(waiting);
      allBefore.add(here);
    }
    for (int k = waiting.nextSetBit(0); k >= 0; k = waiting.nextSetBit(k + 1)) {
      for (int i = waiting.nextSetBit(0); i >= 0; i = waiting.nextSetBit(i + 1)) {
        if (allBefore.get(i).get(k)) {
          allBefore.get(i).or(allBefore.get(k));
        }
      }
    }
    BitSet free = new BitSet();
    waiting.stream()
        .filter(i -> allBefore.get(i).stream().allMatch(j -> allBefore.get(j).get(i)))
        .forEach(free::set);
    return free;
  }

  private static int count(BitSet pieces, BitSet waiting) {
    BitSet both = (BitSet) pieces.clone();
    both.and(waiting);
    return both.cardinality();
  }

  private static List<SetPiece> inRows(List<SetPiece> pieces) {
    List<SetPiece> waiting = new ArrayList<>(pieces);
    waiting.sort(FARTHEST_FIRST);
    List<SetPiece> rows = new ArrayList<>();
    while (!waiting.isEmpty()) {
      SetPiece farthest = waiting.get(0);
      double nearest = farthest.y() - farthest.widest().depth().millimetres() / 2;
      List<SetPiece> row = waiting.stream().filter(piece -> piece.y() >= nearest).toList();
      waiting.removeIf(piece -> piece.y() >= nearest);
      row.stream().sorted(LEFT_TO_RIGHT).forEach(rows::add);
    }
    return List.copyOf(rows);
  }
}
