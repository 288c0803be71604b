package shelfful.bound;

/**
 * The multipliers of one inequality of {@link CellBound}: prices of the corners of cells and of the
 * rim of the room. Any prices within the ranges below give a true inequality.
 *
 * @param inner price of a corner's angle beyond 120°, inside the room, at least 0, mm² per radian
 * @param rim price of a corner's angle beyond a right angle, where a side meets the rim, at least
 *     {@code inner}, mm² per radian
 * @param wall what a length of wall saves, at least 0, mm
 * @param edge what a length of shelf edge saves, mm; negative where bodies may reach past it
 * @param turn price of the turning of the rim within a cell, at least 0, mm² per radian
 */
record CellPrices(double inner, double rim, double wall, double edge, double turn) {
  CellPrices {
    if (!(inner >= 0 && rim >= inner && wall >= 0 && turn >= 0)) {
      throw new IllegalArgumentException("a price of a cell is out of its range");
    }
  }

  /**
   * Prices that suit discs of one radius: a regular hexagon is the best cell inside, two thirds of
   * one on a straight wall, a third of one in a corner of 120°. The resulting inequality is
   * Groemer's and Oler's but for 1 % of the radius along the wall.
   */
  static CellPrices tunedTo(double radius) {
    double square = radius * radius;
    double halfAngle = Math.PI / 6;
    double secant = 1 / (Math.cos(halfAngle) * Math.cos(halfAngle));
    double inner = 3 / Math.PI * (halfAngle * secant - Math.tan(halfAngle));
    double level = secant / 2 - inner;
    double onWall = Math.PI * level / 2;
    double weight = onWall * onWall / 2;
    double rim = (1 + 2 * weight) / 2 - level;
    double wall = (0.5 - weight) * radius;
    return new CellPrices(
        inner * square, rim * square, wall, wall, Math.max(0, level - weight) * square);
  }

  CellPrices withEdge(double saving) {
    return new CellPrices(inner, rim, wall, saving, turn);
  }

  /** No prices at all: cells are worth their area. */
  static CellPrices none() {
    return new CellPrices(0, 0, 0, 0, 0);
  }
}
