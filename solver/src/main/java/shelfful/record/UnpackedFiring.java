package shelfful.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A firing with what is known of its pieces. Of several results of one piece the last holds: that
 * is how a mistake is corrected.
 *
 * @param record the firing
 * @param results at most one for each piece of it, in the order first given; pieces without one
 *     were not looked at yet
 */
public record UnpackedFiring(FiringRecord record, List<PieceResult> results) {
  /** Keeps the last result of each piece, and only of pieces that stood in the firing. */
  public UnpackedFiring {
    Map<String, PieceResult> last = new LinkedHashMap<>();
    for (PieceResult result : results) {
      if (record.holds(result.pieceId())) {
        last.put(result.pieceId(), result);
      }
    }
    results = List.copyOf(last.values());
  }

  /** How a piece came out, where somebody has looked. */
  public Optional<PieceResult> result(String pieceId) {
    return results.stream().filter(one -> one.pieceId().equals(pieceId)).findFirst();
  }

  /** How many came out so. */
  public int count(Grade grade) {
    return (int) results.stream().filter(one -> one.grade() == grade).count();
  }
}
