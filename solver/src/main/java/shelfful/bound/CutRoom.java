package shelfful.bound;

import java.util.List;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Oval;
import shelfful.geometry.Shape;
import shelfful.measure.Point;

/**
 * A convex room with the sections of pieces at one height in it, and what posts in it take.
 *
 * @param polygon the room
 * @param rim of it
 * @param sections of every piece that is there at the height
 * @param halfGap no piece asks for a wider one
 * @param round the same room as a disc, or null for the polygon
 */
record CutRoom(
    ConvexPolygon polygon, RoomRim rim, List<Section> sections, double halfGap, RoundRoom round) {
  /** A post's middle may be so far from its position, and the judge passes it, mm. */
  private static final double POST_OFF = 1;

  /** What each piece takes under some prices. */
  double[] shares(int pieces, CellPrices prices) {
    double[] shares = new double[pieces];
    for (Section section : sections) {
      shares[section.piece()] = share(section, prices);
    }
    return shares;
  }

  /** What the room has to give under some prices. */
  double room(CellPrices prices) {
    return round == null ? CellBound.room(polygon, prices) : round.room(prices);
  }

  private double disc(double radius, double toWall, double toEdge, CellPrices prices) {
    return round == null
        ? CellBound.share(rim, radius, toWall, toEdge, prices)
        : round.share(radius, toWall, prices);
  }

  private double share(Section section, CellPrices prices) {
    double disc = disc(section.inner(), section.toWall(), section.toEdge(), prices);
    boolean whole = section.toEdge() >= section.outer();
    if (section.outer() <= section.inner() || !whole) {
      return disc;
    }
    double rolling = rolling(section.shape()) + section.growth();
    double core = CellBound.share(rim, rolling, rolling, rolling, prices);
    double more = section.shape().areaGrownBy(section.growth()) - Math.PI * rolling * rolling;
    double longest = 2 * Math.PI * (section.outer() - rolling);
    double saving = Math.max(0, Math.max(prices.wall(), prices.edge()));
    return core > 0 ? Math.max(disc, core + more - saving * longest) : disc;
  }

  /** The largest disc that rolls inside an outline all round. */
  private static double rolling(Shape shape) {
    if (shape instanceof Oval oval) {
      double longer = oval.outerRadius();
      double shorter = oval.innerRadius();
      return shorter * shorter / longer;
    }
    return shape.innerRadius();
  }

  /** What posts of a radius, kept clear of by a clearance, take under some prices. */
  double posts(List<Point> at, double radius, CellPrices prices) {
    double grown = radius - halfGap - PieceSizes.SLACK;
    double taken = 0;
    if (grown <= 0) {
      return 0;
    }
    for (Point point : at) {
      double x = point.x().millimetres();
      double y = point.y().millimetres();
      double toWall = round == null ? polygon.depth(x, y, Side.WALL) : round.depth(x, y);
      double toEdge = round == null ? polygon.depth(x, y, Side.EDGE) : toWall;
      taken += disc(grown, toWall - POST_OFF, toEdge - POST_OFF, prices);
    }
    return taken;
  }
}
