package shelfful.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.ware.Batch;
import shelfful.ware.Part;
import shelfful.ware.Piece;

/**
 * Pieces that are alike and wait for the same reason.
 *
 * @param batch they belong to
 * @param part of its form
 * @param reason from the closed list, with the figures of the first of them
 * @param pieceIds all of them, in the order of the list; never empty
 */
public record WaitingGroup(Batch batch, Part part, LeftOut reason, List<String> pieceIds) {
  /** Takes its own copy. */
  public WaitingGroup {
    pieceIds = List.copyOf(pieceIds);
    if (pieceIds.isEmpty()) {
      throw new IllegalArgumentException("A group of waiting pieces has at least one");
    }
  }

  private record Key(String batchId, Part part, LeftOut.Reason reason) {}

  /** Every piece that waits in a load, in groups, in the order of the list. */
  public static List<WaitingGroup> of(Load load) {
    Map<String, LeftOut> waiting =
        load.leftOut().stream()
            .collect(Collectors.toMap(LeftOut::pieceId, one -> one, (first, same) -> first));
    Map<Key, List<Piece>> groups = new LinkedHashMap<>();
    for (Piece piece : load.request().pieces()) {
      LeftOut why = waiting.get(piece.id());
      if (why != null) {
        Key key = new Key(piece.batch().id(), piece.part(), why.reason());
        groups.computeIfAbsent(key, fresh -> new ArrayList<>()).add(piece);
      }
    }
    return groups.values().stream()
        .map(
            pieces ->
                new WaitingGroup(
                    pieces.get(0).batch(),
                    pieces.get(0).part(),
                    waiting.get(pieces.get(0).id()),
                    pieces.stream().map(Piece::id).toList()))
        .toList();
  }

  /** How many wait. */
  public int size() {
    return pieceIds.size();
  }
}
