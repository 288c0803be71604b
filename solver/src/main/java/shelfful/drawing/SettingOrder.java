package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order pieces of a layer are set in: the far side first, then left to right, so that no arm
 * reaches over ware that already stands. Rows are taken by depth: a row is every piece whose axis
 * lies no more than half the depth of its farthest piece in front of that piece's axis.
 */
final class SettingOrder {
  private static final Comparator<SetPiece> FARTHEST_FIRST =
      Comparator.comparingDouble((SetPiece piece) -> -piece.y())
          .thenComparingDouble(SetPiece::x)
          .thenComparing(piece -> piece.piece().id());
  private static final Comparator<SetPiece> LEFT_TO_RIGHT =
      Comparator.comparingDouble(SetPiece::x).thenComparing(FARTHEST_FIRST);

  private SettingOrder() {}

  /** The pieces numbered from 1. The same pieces in any order get the same numbers. */
  static List<SetPiece> number(List<SetPiece> pieces) {
    List<SetPiece> waiting = new ArrayList<>(pieces);
    waiting.sort(FARTHEST_FIRST);
    List<SetPiece> numbered = new ArrayList<>();
    while (!waiting.isEmpty()) {
      SetPiece farthest = waiting.get(0);
      double nearest = farthest.y() - farthest.widest().depth().millimetres() / 2;
      List<SetPiece> row = waiting.stream().filter(piece -> piece.y() >= nearest).toList();
      waiting.removeIf(piece -> piece.y() >= nearest);
      row.stream()
          .sorted(LEFT_TO_RIGHT)
          .forEach(piece -> numbered.add(piece.numbered(numbered.size() + 1)));
    }
    return List.copyOf(numbered);
  }
}
