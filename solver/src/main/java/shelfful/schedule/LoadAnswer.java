package shelfful.schedule;

import java.util.List;
import java.util.Map;
import java.util.Set;
import shelfful.load.Load;

/**
 * A planned load, its pieces named after kinds of units rather than after anybody's batches.
 *
 * @param load that was judged
 * @param placed units that went in, by kind
 * @param refused kinds that cannot stand in this kiln however much room there is
 * @param leftForRoom whether something would have gone in with more room
 */
record LoadAnswer(
    Load load, Map<UnitKind, List<PlacedUnit>> placed, Set<UnitKind> refused, boolean leftForRoom) {
  LoadAnswer {
    placed = Map.copyOf(placed);
    refused = Set.copyOf(refused);
  }

  /**
   * A unit that went in.
   *
   * @param pieceIds of its parts in the load, in the order of the kind's parts; of a piece whose
   *     lid is fired beside it that of the pot
   */
  record PlacedUnit(List<String> pieceIds) {
    PlacedUnit {
      pieceIds = List.copyOf(pieceIds);
    }
  }

  int count(UnitKind kind) {
    return placed.getOrDefault(kind, List.of()).size();
  }
}
