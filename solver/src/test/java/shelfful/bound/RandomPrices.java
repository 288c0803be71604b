package shelfful.bound;

import java.util.Random;

/** Prices of cells drawn from everything that is allowed, for discs of about radius 1. */
final class RandomPrices {
  private RandomPrices() {}

  static CellPrices of(Random random, double unit) {
    double inner = 0.3 * random.nextDouble() * unit * unit;
    double rim = inner + 0.7 * random.nextDouble() * unit * unit;
    double wall = 0.3 * random.nextDouble() * unit;
    double edge = (0.6 * random.nextDouble() - 0.3) * unit;
    double turn = 0.4 * random.nextDouble() * unit * unit;
    return new CellPrices(inner, rim, wall, edge, turn);
  }
}
