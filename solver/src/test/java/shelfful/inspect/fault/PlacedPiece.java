package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * A piece where it stands. Lengths are micrometres; an outline is taken as the largest circle in
 * it, so that what is too close for the circle is too close for the piece.
 */
record PlacedPiece(Layer layer, Placement placement, Piece piece, Form form, StandingWare ware) {

  /** Every piece that stands by itself, in an order that the random numbers choose. */
  static List<PlacedPiece> of(Load load, Random random) {
    Map<String, Piece> list = new HashMap<>();
    load.request().pieces().forEach(piece -> list.put(piece.id(), piece));
    List<PlacedPiece> placed = new ArrayList<>();
    for (Layer layer : load.layers()) {
      for (Pile pile : Pile.of(layer.placements())) {
        Placement placement = pile.lowest();
        if (pile.size() == 1) {
          placed.add(of(load, layer, placement, list.get(placement.pieceId())));
        }
      }
    }
    Collections.shuffle(placed, random);
    return placed;
  }

  private static PlacedPiece of(Load load, Layer layer, Placement placement, Piece piece) {
    Form form = load.request().studio().form(piece.batch().formId()).orElseThrow();
    StandingWare ware =
        StandingWare.of(
            form,
            piece.part(),
            load.request().firing().kind().goesIn(),
            placement.onCatcher()
                ? Optional.of(load.request().studio().rules().catcher())
                : Optional.empty());
    return new PlacedPiece(layer, placement, piece, form, ware);
  }

  Optional<Glaze> glaze(Load load) {
    return piece.batch().glazeId().flatMap(load.request().studio()::glaze);
  }

  long tolerance() {
    return form.tolerance().micrometres();
  }

  long x() {
    return placement.at().x().micrometres();
  }

  long y() {
    return placement.at().y().micrometres();
  }

  long base() {
    return layer.z().micrometres();
  }

  long top() {
    return base() + ware.height().micrometres();
  }

  double footRadius() {
    return radius(ware.foot());
  }

  /** The widest band at any height between two. */
  Optional<Double> radiusBetween(long bottom, long top) {
    return ware.bands().stream()
        .filter(
            band ->
                base() + band.from().micrometres() < top
                    && bottom < base() + band.to().micrometres())
        .map(band -> radius(band.outline()))
        .max(Double::compare);
  }

  double widestRadius() {
    return radiusBetween(base(), top()).orElseThrow();
  }

  /**
   * The sum of radii of the two bands that need the most room at a height both have; empty when
   * they share none.
   */
  Optional<Double> radiiWith(PlacedPiece other) {
    return ware.bands().stream()
        .flatMap(band -> radiusWith(band, other).stream())
        .max(Double::compare);
  }

  private Optional<Double> radiusWith(Band band, PlacedPiece other) {
    return other
        .radiusBetween(base() + band.from().micrometres(), base() + band.to().micrometres())
        .map(radius -> radius + radius(band.outline()));
  }

  private static double radius(Outline outline) {
    return Math.min(outline.width().micrometres(), outline.depth().micrometres()) / 2.0;
  }
}
