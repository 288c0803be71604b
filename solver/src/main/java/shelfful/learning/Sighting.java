package shelfful.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.record.FiredPiece;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/**
 * One piece that was looked at after its firing.
 *
 * @param firingId the firing
 * @param kilnId the kiln
 * @param piece where and what it was
 * @param grade how it came out
 */
public record Sighting(String firingId, String kilnId, FiredPiece piece, Grade grade) {

  /** Every piece of some firings that has a result. */
  public static List<Sighting> of(List<UnpackedFiring> firings) {
    List<Sighting> sightings = new ArrayList<>();
    for (UnpackedFiring firing : firings) {
      for (FiredPiece piece : firing.record().pieces()) {
        Optional<PieceResult> result = firing.result(piece.pieceId());
        result.ifPresent(
            one ->
                sightings.add(
                    new Sighting(
                        firing.record().id(),
                        firing.record().firing().kilnId(),
                        piece,
                        one.grade())));
      }
    }
    return List.copyOf(sightings);
  }
}
