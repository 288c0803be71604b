package shelfful.inspect.fault;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Clearances;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;

/** Pieces too close to something. Each distance is a twentieth of a millimetre short. */
final class PieceFaults {
  static final long SHORT = 50;

  private PieceFaults() {}

  static Optional<Load> movedTooClose(Load load, Random random) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    for (PlacedPiece still : pieces) {
      for (PlacedPiece moved : pieces) {
        Optional<Double> radii = still.radiiWith(moved);
        if (still == moved || still.layer() != moved.layer() || radii.isEmpty()) {
          continue;
        }
        double away = radii.get() + gap(load, still, moved) - SHORT;
        double angle = random.nextDouble() * 2 * Math.PI;
        return Optional.of(
            LoadEdit.moved(
                load,
                moved,
                still.x() + away * Math.cos(angle),
                still.y() + away * Math.sin(angle)));
      }
    }
    return Optional.empty();
  }

  private static long gap(Load load, PlacedPiece one, PlacedPiece other) {
    Clearances clearances = clearances(load);
    long tolerances = one.tolerance() + other.tolerance();
    if (load.request().firing().kind() == FiringKind.BISQUE) {
      return clearances.bisqueToBisque().micrometres() + tolerances;
    }
    Length house = clearances.glazedToGlazed();
    Length first = one.glaze(load).flatMap(Glaze::gap).orElse(house);
    Length second = other.glaze(load).flatMap(Glaze::gap).orElse(house);
    return Length.longer(house, Length.longer(first, second)).micrometres() + tolerances;
  }

  static Clearances clearances(Load load) {
    return load.request().studio().rules().clearances();
  }

  /** The house asks for more than two neighbours keep. */
  static Optional<Load> gapWidened(Load load, Random random) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    for (PlacedPiece one : pieces) {
      for (PlacedPiece other : pieces) {
        Optional<Double> radii = one.radiiWith(other);
        if (one != other && one.layer() == other.layer() && radii.isPresent()) {
          double apart = Math.hypot(one.x() - other.x(), one.y() - other.y()) - radii.get();
          double gap = apart - one.tolerance() - other.tolerance() + SHORT;
          return Optional.of(StudioEdit.gap(load, new Length(Math.round(Math.max(0, gap)))));
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Load> againstPost(Load load, Random random) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    for (PlacedPiece piece : pieces) {
      for (StandingPost post : load.posts()) {
        long base = post.base().micrometres();
        Optional<Double> radius = piece.radiusBetween(base, base + PostFaults.length(load, post));
        if (radius.isEmpty()) {
          continue;
        }
        double away =
            radius.get()
                + PostFaults.across(load, post) / 2.0
                + clearances(load).wareToPost().micrometres()
                + piece.tolerance()
                - SHORT;
        double angle = random.nextDouble() * 2 * Math.PI;
        return Optional.of(
            LoadEdit.moved(
                load,
                piece,
                post.at().x().micrometres() + away * Math.cos(angle),
                post.at().y().micrometres() + away * Math.sin(angle)));
      }
    }
    return Optional.empty();
  }

  static Optional<Load> againstWall(Load load, Random random) {
    FloorPlan plan = kiln(load).chamber().floorPlan();
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece -> {
              double less =
                  piece.widestRadius()
                      + clearances(load).wareToWall().micrometres()
                      + piece.tolerance()
                      - SHORT;
              if (plan instanceof FloorPlan.Polygon) {
                double y = -(plan.depth().micrometres() / 2.0 - less);
                return LoadEdit.moved(load, piece, 0, y);
              }
              double x = plan.width().micrometres() / 2.0 - less;
              return LoadEdit.moved(load, piece, x, 0);
            });
  }

  static Kiln kiln(Load load) {
    return load.request().kiln();
  }

  /** A cone pack a little too near to a piece, at whatever height. */
  static Optional<Load> keepOutBeside(Load load, Random random) {
    long across = 10_000;
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece -> {
              double away =
                  piece.widestRadius()
                      + across / 2.0
                      + clearances(load).wareToKeepOut().micrometres()
                      + piece.tolerance()
                      - SHORT;
              Point at = LoadEdit.point(piece.x() + away, piece.y());
              return StudioEdit.keepOut(
                  load,
                  new KeepOut(
                      "planted",
                      KeepOut.Kind.CONE_PACK,
                      at,
                      at,
                      new Length(across),
                      Length.ZERO,
                      kiln(load).chamber().height()));
            });
  }

  /** A piece in the plan where another column's shelf lies at its height. */
  static Optional<Load> throughShelf(Load load, Random random) {
    for (PlacedPiece piece : PlacedPiece.of(load, random)) {
      for (Layer layer : load.layers()) {
        Shelf shelf = ShelfFaults.shelf(load, layer);
        long top = layer.z().micrometres();
        if (layer != piece.layer()
            && piece.radiusBetween(top - shelf.thickness().micrometres(), top).isPresent()) {
          ShelfPlace place = ShelfFaults.place(load, layer);
          Point inside = ShelfEdge.laid(place, ShelfEdge.inside(shelf.outline()));
          return Optional.of(
              LoadEdit.moved(load, piece, inside.x().micrometres(), inside.y().micrometres()));
        }
      }
    }
    return Optional.empty();
  }
}
