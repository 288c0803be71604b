package shelfful.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.inspect.InspectedLoad;
import shelfful.kiln.FloorPlan;
import shelfful.load.Firing;
import shelfful.load.Layer;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ware.Piece;
import shelfful.ware.Zone;

/**
 * One firing that was loaded from a plan: nothing is typed again that the plan says.
 *
 * @param id unique among the firings kept together; harmless as a file name
 * @param day it was begun
 * @param firing what was planned
 * @param planMark the mark of the plan it was loaded from
 * @param waited how many pieces of the list were left out
 * @param limit what no load of that list could exceed, where it was worked out
 * @param pieces what stood in it and where
 * @param course how it really went
 */
public record FiringRecord(
    String id,
    LocalDate day,
    Firing firing,
    String planMark,
    int waited,
    Optional<Integer> limit,
    List<FiredPiece> pieces,
    FiringCourse course) {
  /** Takes its own copy; refuses a piece that stands in it twice. */
  public FiringRecord {
    pieces = List.copyOf(pieces);
    Set<String> ids = new HashSet<>();
    for (FiredPiece piece : pieces) {
      if (!ids.add(piece.pieceId())) {
        throw new IllegalArgumentException("The piece " + piece.pieceId() + " is named twice");
      }
    }
  }

  /**
   * The record of a plan that is about to be fired.
   *
   * @param planMark the plan's mark as it is on its paper
   * @param limit what no load of the list can exceed, where it is known
   */
  public static FiringRecord of(
      InspectedLoad load, LocalDate day, String planMark, Optional<Integer> limit) {
    LoadRequest request = load.load().request();
    FloorPlan chamber = request.kiln().chamber().floorPlan();
    Map<String, Piece> pieces =
        request.pieces().stream().collect(Collectors.toMap(Piece::id, piece -> piece));
    List<FiredPiece> fired = new ArrayList<>();
    for (Layer layer : load.load().layers()) {
      Zone zone = load.figures(layer.id()).zone();
      for (Placement one : layer.placements()) {
        Piece piece = pieces.get(one.pieceId());
        fired.add(
            new FiredPiece(
                piece.id(),
                piece.batch().formId(),
                piece.batch().glazeId(),
                layer.id(),
                zone,
                Ring.of(chamber, one.at())));
      }
    }
    return new FiringRecord(
        day + "-" + planMark.replace("-", ""),
        day,
        request.firing(),
        planMark,
        load.load().leftOut().size(),
        limit,
        fired,
        FiringCourse.UNKNOWN);
  }

  /** The same firing with what was noted of its course. */
  public FiringRecord with(FiringCourse noted) {
    return new FiringRecord(id, day, firing, planMark, waited, limit, pieces, noted);
  }

  /** Whether a piece stood in it. */
  public boolean holds(String pieceId) {
    return pieces.stream().anyMatch(piece -> piece.pieceId().equals(pieceId));
  }
}
