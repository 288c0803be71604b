package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Region;
import shelfful.kiln.Column;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Mass;
import shelfful.planning.KilnPlan;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;

/**
 * The room on one level of a column: all its places together, and the posts that may stand there.
 */
final class LevelRoom {
  private final Region chamber;
  private final List<List<Region>> places = new ArrayList<>();
  private final HouseRules rules;
  private final double postRadius;
  private final long grams;

  LevelRoom(Studio studio, Kiln kiln, Column column, List<List<Shelf>> shelves) {
    this.chamber = KilnPlan.chamber(kiln.chamber().floorPlan());
    this.rules = studio.rules();
    long carried = 0;
    for (int p = 0; p < column.places().size(); p++) {
      ShelfPlace place = column.places().get(p);
      places.add(
          shelves.get(p).stream().map(shelf -> KilnPlan.shelf(shelf, place)).distinct().toList());
      long most =
          shelves.get(p).stream()
              .mapToLong(shelf -> shelf.massLimit().map(Mass::grams).orElse(Long.MAX_VALUE / 64))
              .max()
              .orElse(0);
      carried += most;
    }
    this.grams = carried;
    this.postRadius =
        studio.posts().stream()
            .filter(post -> post.count() > 0)
            .mapToDouble(post -> post.across().millimetres() / 2)
            .min()
            .orElse(0);
  }

  /** The most the shelves of the level may carry. */
  long grams() {
    return grams;
  }

  HouseRules rules() {
    return rules;
  }

  double postRadius() {
    return postRadius;
  }

  private double wall() {
    return rules.clearances().wareToWall().millimetres();
  }

  /** How far inside the shelf the axis of a piece stays at least. */
  double insideShelf(PieceSizes piece) {
    double foot = piece.footInside() + rules.clearances().footToShelfEdge().millimetres();
    return rules.bellyMayPassEdge() ? foot : Math.max(foot, piece.bodyInside());
  }

  /** Where the axis of a piece can be. */
  ConvexPolygon axis(PieceSizes piece) {
    return room(piece.bodyInside() + wall(), insideShelf(piece));
  }

  /**
   * The chamber moved inwards and the shelves moved outwards, a polygon that holds their
   * intersection.
   */
  ConvexPolygon room(double fromWall, double fromEdge) {
    ConvexPolygon within = ConvexPolygon.everywhere().within(chamber, fromWall, Side.WALL);
    if (fromEdge == Double.NEGATIVE_INFINITY) {
      return within;
    }
    ConvexPolygon all = null;
    for (List<Region> outlines : places) {
      for (Region outline : outlines) {
        ConvexPolygon one = within.within(outline, fromEdge, Side.EDGE);
        all = all == null ? one : all.hullWith(one, Side.EDGE);
      }
    }
    if (all == null) {
      return within;
    }
    return places.size() == 1 && places.get(0).size() == 1
        ? all
        : all.within(chamber, fromWall, Side.WALL);
  }

  /** The inset of the room that holds all bodies grown by half a gap. */
  double wallInset(double halfGap) {
    return wall() - halfGap - PieceSizes.SLACK;
  }
}
