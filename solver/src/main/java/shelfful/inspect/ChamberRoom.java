package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.FloorPlan;

/** The inside of a chamber as a room. */
final class ChamberRoom {
  private ChamberRoom() {}

  static Room of(FloorPlan plan) {
    if (plan instanceof FloorPlan.Round round) {
      return new Room(List.of(), Optional.of(new Disc(0, 0, round.diameter().micrometres())));
    }
    if (plan instanceof FloorPlan.Polygon polygon) {
      return new Room(
          PolygonCorners.regularWalls(polygon.sides(), polygon.acrossFlats().micrometres()),
          Optional.empty());
    }
    double halfWidth = plan.width().micrometres() / 2.0;
    double halfDepth = plan.depth().micrometres() / 2.0;
    if (plan instanceof FloorPlan.Oval) {
      return new Room(
          List.of(), Optional.of(new Ellipse(Vector.ZERO, halfWidth, halfDepth, new Vector(1, 0))));
    }
    return new Room(ShelfShape.rectangleWalls(halfWidth, halfDepth), Optional.empty());
  }
}
