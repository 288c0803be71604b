package shelfful.bound;

import shelfful.bound.ConvexPolygon.Side;

/**
 * How much of a room each body takes with the gaps that must stay round it, whatever the setting.
 *
 * <p><b>Theorem.</b> Let bodies that do not overlap, two at least, lie in a convex room of area A
 * whose rim has the length P. For any prices n1 (inner), n2 (rim) with n2 at least n1, k (saving)
 * and m (turn), the sum of c over the bodies is at most A - k P + 2 pi m, where c of a body is a
 * lower bound, over all convex cells in the room that hold it, of
 *
 * <p>area + n1 (sum over inner corners of g - 2 pi/3) + n2 (sum over corners at the rim of g -
 * pi/2) - k (length of rim) + m (turning of the rim),
 *
 * <p>g being the corner's angle. With one radius and suitable prices it is the theorem of H.
 * Groemer (1960) and N. Oler (1961); the cells are those of L. Fejes Tóth, "Some packing and
 * covering theorems", Acta Sci. Math. Szeged 12 (1950). The proof is in docs/engine.md.
 *
 * <p>For a disc of radius r, all walls at least t from its centre, put s = r²/2 and w = (t/2 - k)
 * t, and M(a, x) = the least of a tan y - x y over y from 0. Then c = 2 pi x for every level x with
 * n1 pi/3 + 2 M(s, n1 + x) at least 0, and n2 pi + 2 M(s, n2 + x) + 2 M(w, n2 + x) - (x - w - m) T
 * at least 0 where x exceeds w + m, T being the most turning that a cell can have without being
 * worth 2 pi x by its area alone.
 */
final class CellBound {
  private static final int HALVINGS = 30;

  private CellBound() {}

  /** The right side: what a room has to give under some prices. */
  static double room(ConvexPolygon room, CellPrices prices) {
    return room.area()
        - prices.wall() * room.length(Side.WALL)
        - prices.edge() * room.length(Side.EDGE)
        + 2 * Math.PI * prices.turn();
  }

  /**
   * What the cell of a disc takes at least; 0 for a disc that the prices do not suit.
   *
   * @param rim of the room, for how much of its turning one cell can have
   * @param radius of the disc, mm
   * @param toWall the least distance of its centre from any wall of the room, mm
   * @param toEdge the least distance of its centre from any shelf edge of the room, mm
   */
  static double share(
      RimTurning rim, double radius, double toWall, double toEdge, CellPrices prices) {
    return share(rim, radius, new Place(toWall, toEdge, 0), prices);
  }

  /**
   * Where a disc is in a room.
   *
   * @param toWall the least distance of its centre from any wall, mm
   * @param toEdge the least distance of its centre from any shelf edge, mm
   * @param more what the body round the disc takes beyond it, mm²
   */
  record Place(double toWall, double toEdge, double more) {}

  /**
   * What the cell of a body takes at least that is a disc and a convex body added (Minkowski), not
   * counting {@link Place#more}; 0 when the prices do not suit.
   */
  static double share(RimTurning rim, double radius, Place place, CellPrices prices) {
    double toWall = place.toWall;
    double toEdge = place.toEdge;
    double side = radius * radius / 2;
    double run = Math.min(weight(toWall, prices.wall()), weight(toEdge, prices.edge()));
    if (!(run > 0)) {
      return 0;
    }
    double inside = inside(side, prices.inner());
    if (Double.isInfinite(run)) {
      return Math.max(0, 2 * Math.PI * inside);
    }
    double turned = run + prices.turn();
    double saving = Math.max(0, Math.max(prices.wall(), prices.edge()));
    double turning =
        inside > turned ? rim.mostTurning(2 * Math.PI * inside + place.more, saving) : 0;
    Rim onRim = new Rim(side, run, prices.rim(), turned, turning);
    return Math.max(0, 2 * Math.PI * (onRim.pays(inside) ? inside : onRim.level(inside)));
  }

  private static double weight(double distance, double saving) {
    if (Double.isInfinite(distance)) {
      return Double.POSITIVE_INFINITY;
    }
    return distance > 0 ? (distance / 2 - saving) * distance : 0;
  }

  /**
   * The level at which a corner inside pays for itself: side/cos² x less the price, where x/cos² x
   * - tan x = price pi / (6 side).
   */
  static double inside(double side, double price) {
    double sought = price * Math.PI / (6 * side);
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double x = (low + high) / 2;
      double secant = 1 + Math.tan(x) * Math.tan(x);
      if (x * secant - Math.tan(x) <= sought) {
        low = x;
      } else {
        high = x;
      }
    }
    return side * (1 + Math.tan(low) * Math.tan(low)) - price;
  }

  /**
   * A stretch of rim in a cell.
   *
   * @param side weight of a side of the cell
   * @param run weight of the rim
   * @param price of the two corners where it ends
   * @param turned level from which turning is worth taking
   * @param turning the most there is
   */
  private record Rim(double side, double run, double price, double turned, double turning) {
    /** Whether a stretch of rim costs nothing or more at a level. */
    boolean pays(double level) {
      double paid =
          price * Math.PI
              + 2 * least(side, price + level)
              + 2 * least(run, price + level)
              - Math.max(0, level - turned) * turning;
      return paid >= 0;
    }

    /** The greatest level below one that does not pay, at which it does. */
    double level(double above) {
      double low = Math.min(Math.min(side, run) - price, turned);
      double high = above;
      for (int i = 0; i < HALVINGS; i++) {
        double level = (low + high) / 2;
        if (pays(level)) {
          low = level;
        } else {
          high = level;
        }
      }
      return low;
    }
  }

  /** The least of {@code weight tan x - level x} over x from 0. */
  static double least(double weight, double level) {
    if (level <= weight) {
      return 0;
    }
    double x = Math.acos(Math.sqrt(weight / level));
    return weight * Math.tan(x) - level * x;
  }
}
