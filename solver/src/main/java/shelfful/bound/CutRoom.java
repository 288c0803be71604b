package shelfful.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Oval;
import shelfful.measure.Point;

/**
 * A convex room with the sections of pieces at one height in it, and what posts in it take. Either
 * only what stays wholly inside the room is counted, by its whole outline; or everything is, also
 * what reaches past the rim, by the discs in it.
 *
 * @param polygon the room
 * @param sections of every piece that is there at the height
 * @param halfGap no piece asks for a wider one
 * @param whole whether only what stays inside is counted
 * @param rim of the polygon, or the same room as a disc
 */
record CutRoom(
    ConvexPolygon polygon, List<Section> sections, double halfGap, boolean whole, RimTurning rim) {
  /** Cosine below which two sides are at right angles. */
  private static final double SQUARE = 1e-9;

  /** The same, with the other way of counting. */
  CutRoom counting(boolean wholly) {
    return new CutRoom(polygon, sections, halfGap, wholly, rim);
  }

  /** Whether some piece reaches past the rim. */
  boolean isPassed() {
    return !sections.stream().allMatch(Section::isInside);
  }

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
    return rim instanceof RoundRoom round ? round.room(prices) : CellBound.room(polygon, prices);
  }

  private double disc(double radius, double toWall, double toEdge, CellPrices prices) {
    return rim instanceof RoundRoom round
        ? round.share(radius, toWall, prices)
        : CellBound.share(rim, radius, toWall, toEdge, prices);
  }

  private double share(Section section, CellPrices prices) {
    if (whole && !section.isInside()) {
      return 0;
    }
    double disc = disc(section.inner(), section.toWall(), section.toEdge(), prices);
    if (!whole || section.outer() <= section.inner() || section.growth() < 0) {
      return disc;
    }
    double rolling = rolling(section);
    double more = section.shape().areaGrownBy(section.growth()) - Math.PI * rolling * rolling;
    return Math.max(
        disc, rounded(rolling, more, 2 * Math.PI * (section.outer() - rolling), prices));
  }

  /**
   * What a body takes that a disc rolls in all round: a disc and a convex body added.
   *
   * @param radius of the disc, mm
   * @param more area of the whole beyond the disc, mm²
   * @param perimeter of the body added, or more, mm
   */
  private double rounded(double radius, double more, double perimeter, CellPrices prices) {
    double saving = Math.max(0, Math.max(prices.wall(), prices.edge()));
    double beyond = more - saving * perimeter;
    double core = CellBound.share(rim, radius, new CellBound.Place(radius, radius, beyond), prices);
    return core > 0 ? core + beyond : 0;
  }

  /** The largest disc that rolls inside a grown section all round. */
  static double rolling(Section section) {
    if (section.shape() instanceof Oval oval) {
      double longer = oval.outerRadius();
      double shorter = oval.innerRadius();
      return shorter * shorter / longer + section.growth();
    }
    return section.inner();
  }

  /** What posts of a radius, kept clear of by a clearance, take under some prices. */
  double posts(List<Point> at, double radius, double[] shares, CellPrices prices) {
    double grown = radius - halfGap - PieceSizes.SLACK;
    double taken = 0;
    if (grown <= 0) {
      return 0;
    }
    List<Section> counted =
        sections.stream().filter(section -> shares[section.piece()] > 0).toList();
    List<DeadCorner> accepted = new ArrayList<>();
    for (Point point : at) {
      double most = 0;
      DeadCorner best = null;
      for (DeadCorner one : spoilt(point, grown, counted)) {
        double share = share(one, grown, prices);
        if (share > most && accepted.stream().allMatch(one::isApartFrom)) {
          most = share;
          best = one;
        }
      }
      if (best != null) {
        accepted.add(best);
        taken += most;
      }
    }
    return taken;
  }

  private double share(DeadCorner dead, double grown, CellPrices prices) {
    if (dead.perimeter() > 0) {
      double more = dead.area() + dead.half() * dead.perimeter();
      return rounded(dead.half(), more, dead.perimeter(), prices);
    }
    double toWall = depth(dead.x(), dead.y(), Side.WALL) - DeadCorner.POST_OFF;
    double toEdge = depth(dead.x(), dead.y(), Side.EDGE) - DeadCorner.POST_OFF;
    boolean inside = Math.min(toWall, toEdge) >= grown;
    return whole && !inside ? 0 : disc(grown, toWall, toEdge, prices);
  }

  private double depth(double x, double y, Side side) {
    return rim instanceof RoundRoom round ? round.depth(x, y) : polygon.depth(x, y, side);
  }

  /** The post alone, and with what it spoils towards the nearest rims. */
  private List<DeadCorner> spoilt(Point at, double radius, List<Section> counted) {
    List<DeadCorner> all = new ArrayList<>(List.of(DeadCorner.post(at, radius)));
    List<DeadCorner.Near> rims = whole ? rims(at) : List.of();
    for (DeadCorner.Near rim : rims) {
      add(all, DeadCorner.of(at, radius, counted, List.of(rim)));
    }
    if (rims.size() > 1) {
      add(all, DeadCorner.of(at, radius, counted, rims));
    }
    return all;
  }

  private void add(List<DeadCorner> all, DeadCorner dead) {
    if (dead != null && (rim instanceof RoundRoom || dead.isWithin(polygon))) {
      all.add(dead);
    }
  }

  /** The nearest side, and the nearest at right angles to it. */
  private List<DeadCorner.Near> rims(Point at) {
    double x = at.x().millimetres();
    double y = at.y().millimetres();
    if (rim instanceof RoundRoom round) {
      double off = Math.hypot(x - round.x(), y - round.y());
      return off < 1
          ? List.of()
          : List.of(
              new DeadCorner.Near((x - round.x()) / off, (y - round.y()) / off, round.depth(x, y)));
    }
    List<DeadCorner.Near> sides = new ArrayList<>();
    polygon.sides((ux, uy, to) -> sides.add(new DeadCorner.Near(ux, uy, to - ux * x - uy * y)));
    sides.sort(Comparator.comparingDouble(DeadCorner.Near::distance));
    List<DeadCorner.Near> nearest = new ArrayList<>();
    for (DeadCorner.Near side : sides) {
      boolean first = nearest.isEmpty();
      if (first
          || nearest.size() < 2
              && Math.abs(side.ux() * nearest.get(0).ux() + side.uy() * nearest.get(0).uy())
                  < SQUARE) {
        nearest.add(side);
      }
    }
    return nearest;
  }
}
