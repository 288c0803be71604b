package shelfful.bound;

/**
 * A round room: its rim turns evenly, so a cell there takes more than {@link CellBound} can say of
 * any convex room.
 *
 * @param x of its centre, mm
 * @param y of its centre, mm
 * @param radius mm
 */
record RoundRoom(double x, double y, double radius) implements RimTurning {
  private static final int HALVINGS = 24;
  private static final double SURE = 1e-9;
  private static final int TRIED = 14;

  /** The disc about the middle of a polygon's box that holds the polygon. */
  static RoundRoom round(ConvexPolygon polygon) {
    double x = (polygon.reach(1, 0) - polygon.reach(-1, 0)) / 2;
    double y = (polygon.reach(0, 1) - polygon.reach(0, -1)) / 2;
    return new RoundRoom(x, y, polygon.farthestFrom(x, y));
  }

  /**
   * A stretch that turns by t is r t long, and its hull a segment of area r² (t - sin t)/2. Less
   * the saving that falls from 0, grows, and may fall again at the end: what is at least the target
   * at t and at a full turn is so between.
   */
  @Override
  public double mostTurning(double target, double saving) {
    double low = 0;
    double high = 2 * Math.PI;
    if (left(high, saving) < target) {
      return high;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double turn = (low + high) / 2;
      if (left(turn, saving) >= target) {
        high = turn;
      } else {
        low = turn;
      }
    }
    return high;
  }

  private double left(double turn, double saving) {
    return radius * radius * (turn - Math.sin(turn)) / 2 - saving * radius * turn;
  }

  double area() {
    return Math.PI * radius * radius;
  }

  /** What the room has to give under some prices. */
  double room(CellPrices prices) {
    return area() - prices.wall() * 2 * Math.PI * radius;
  }

  /** How far inside every point of a polygon is at least. */
  double leastDepth(ConvexPolygon inner) {
    return radius - inner.farthestFrom(x, y);
  }

  double depth(double pointX, double pointY) {
    return radius - Math.hypot(pointX - x, pointY - y);
  }

  /**
   * What the cell of a disc takes at least.
   *
   * @param disc its radius, mm
   * @param depth the least distance of its centre from the rim, mm
   */
  double share(double disc, double depth, CellPrices prices) {
    if (depth <= 0) {
      return 0;
    }
    double inside = CellBound.inside(disc * disc / 2, prices.inner());
    if (pays(disc, depth, prices, inside)) {
      return Math.max(0, 2 * Math.PI * inside);
    }
    double low = 0;
    double high = inside;
    if (!pays(disc, depth, prices, low)) {
      return 0;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double level = (low + high) / 2;
      if (pays(disc, depth, prices, level)) {
        low = level;
      } else {
        high = level;
      }
    }
    return 2 * Math.PI * low;
  }

  private boolean pays(double disc, double depth, CellPrices prices, double level) {
    double ends =
        prices.rim() * Math.PI + 2 * CellBound.least(disc * disc / 2, prices.rim() + level);
    return ends + 2 * run(Math.max(0, radius - depth), prices, level) >= SURE * disc * disc;
  }

  /**
   * The least that half a stretch of rim costs: its area less the saving of its length, the price
   * of the angle at its end and the level of the angle it is seen under. Convex in the length, so
   * the least is where the rate is 0.
   */
  private double run(double off, CellPrices prices, double level) {
    double low = 0;
    double high = Math.PI;
    if (rate(off, prices, level, low) >= 0) {
      return 0;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double turn = (low + high) / 2;
      if (rate(off, prices, level, turn) < 0) {
        low = turn;
      } else {
        high = turn;
      }
    }
    double slack = (high - low) * Math.abs(rate(off, prices, level, low));
    double lean = Math.atan2(off * Math.sin(low), radius - off * Math.cos(low));
    double area = radius * (radius * low - off * Math.sin(low)) / 2;
    return area - prices.wall() * radius * low - prices.rim() * lean - level * (low + lean) - slack;
  }

  private double rate(double off, CellPrices prices, double level, double turn) {
    double towards = radius - off * Math.cos(turn);
    double square = radius * radius + off * off - 2 * radius * off * Math.cos(turn);
    double leaning = radius * towards / square - 1;
    return (towards / 2 - prices.wall()) * radius - level - (prices.rim() + level) * leaning;
  }

  /** Prices that suit discs of one radius in this room. */
  CellPrices tunedTo(double disc) {
    CellPrices flat = CellPrices.tunedTo(disc);
    double level = CellBound.inside(disc * disc / 2, flat.inner());
    CellPrices best = new CellPrices(flat.inner(), flat.inner(), 0, 0, 0);
    for (int i = 0; i < TRIED; i++) {
      double rim = flat.inner() + disc * disc * 0.05 * i;
      double low = 0;
      double high = disc / 2;
      for (int j = 0; j < HALVINGS / 2; j++) {
        double wall = (low + high) / 2;
        CellPrices tried = new CellPrices(flat.inner(), rim, wall, wall, 0);
        if (pays(disc, disc, tried, level)) {
          low = wall;
        } else {
          high = wall;
        }
      }
      best = low > best.wall() ? new CellPrices(flat.inner(), rim, low, low, 0) : best;
    }
    return best;
  }
}
