package shelfful.bound;

/**
 * A small linear program: the greatest worth of amounts between 0 and their bounds under a few
 * limits. By the simplex method with bounded variables on a dense tableau (Dantzig's rule). Only
 * the dual prices found are trusted: with any prices at least 0, prices times rooms plus what each
 * piece is worth beyond the prices of its shares is a true upper bound.
 */
final class SmallProgram {
  private static final int MOST_PIVOTS = 400;
  private static final double NOTHING = 1e-9;

  private final double[] worth;
  private final double[] bound;
  private final double[][] rows;
  private final double[] room;
  private final int columns;
  private final int[] basic;
  private final int[] outside;
  private final boolean[] flipped;
  private final double[] upper;
  private final double[] reduced;

  /**
   * Sets up a program.
   *
   * @param worth of a unit of each amount
   * @param bound the most of each amount
   * @param limits with room for nothing at all, at least
   */
  SmallProgram(double[] worth, double[] bound, double[][] shares, double[] rooms) {
    this.columns = worth.length;
    this.worth = worth;
    this.bound = bound;
    this.rows = new double[rooms.length][];
    this.room = rooms.clone();
    this.basic = new int[rooms.length];
    this.outside = new int[columns];
    this.upper = new double[columns + rooms.length];
    this.flipped = new boolean[columns + rooms.length];
    this.reduced = worth.clone();
    for (int r = 0; r < rooms.length; r++) {
      rows[r] = shares[r].clone();
      basic[r] = columns + r;
      upper[columns + r] = Double.POSITIVE_INFINITY;
    }
    for (int j = 0; j < columns; j++) {
      outside[j] = j;
      upper[j] = bound[j];
    }
  }

  /** Solves; the answer is in {@link #prices} and {@link #amounts}. */
  void solve() {
    for (int pivots = 0; pivots < MOST_PIVOTS; pivots++) {
      int entering = entering();
      if (entering < 0 || !step(entering)) {
        return;
      }
    }
  }

  private int entering() {
    int best = -1;
    double most = NOTHING;
    for (int j = 0; j < columns; j++) {
      if (reduced[j] > most && upper[outside[j]] > 0) {
        most = reduced[j];
        best = j;
      }
    }
    return best;
  }

  private boolean step(int j) {
    double least = upper[outside[j]];
    int row = -1;
    boolean toUpper = false;
    for (int r = 0; r < rows.length; r++) {
      double rate = rows[r][j];
      if (rate > NOTHING && room[r] / rate < least) {
        least = room[r] / rate;
        row = r;
        toUpper = false;
      } else if (rate < -NOTHING && (upper[basic[r]] - room[r]) / -rate < least) {
        least = (upper[basic[r]] - room[r]) / -rate;
        row = r;
        toUpper = true;
      }
    }
    if (Double.isInfinite(least)) {
      return false;
    }
    if (row < 0) {
      flipOutside(j);
      return true;
    }
    if (toUpper) {
      flipBasic(row);
    }
    pivot(row, j);
    return true;
  }

  private void flipOutside(int j) {
    double by = upper[outside[j]];
    for (int r = 0; r < rows.length; r++) {
      room[r] -= rows[r][j] * by;
      rows[r][j] = -rows[r][j];
    }
    reduced[j] = -reduced[j];
    flipped[outside[j]] = !flipped[outside[j]];
  }

  private void flipBasic(int row) {
    room[row] = upper[basic[row]] - room[row];
    for (int j = 0; j < columns; j++) {
      rows[row][j] = -rows[row][j];
    }
    flipped[basic[row]] = !flipped[basic[row]];
  }

  private void pivot(int row, int column) {
    double by = 1 / rows[row][column];
    for (int j = 0; j < columns; j++) {
      rows[row][j] *= by;
    }
    rows[row][column] = by;
    room[row] *= by;
    for (int r = 0; r < rows.length; r++) {
      double factor = rows[r][column];
      if (r != row && factor != 0) {
        rows[r][column] = 0;
        for (int j = 0; j < columns; j++) {
          rows[r][j] -= factor * rows[row][j];
        }
        room[r] = Math.max(0, room[r] - factor * room[row]);
      }
    }
    double factor = reduced[column];
    reduced[column] = 0;
    for (int j = 0; j < columns; j++) {
      reduced[j] -= factor * rows[row][j];
    }
    int left = basic[row];
    basic[row] = outside[column];
    outside[column] = left;
  }

  /** A price for each limit, at least 0. */
  double[] prices() {
    double[] prices = new double[rows.length];
    for (int j = 0; j < columns; j++) {
      int variable = outside[j];
      if (variable >= columns && !flipped[variable]) {
        prices[variable - columns] = Math.max(0, -reduced[j]);
      }
    }
    return prices;
  }

  /** How much of each. */
  double[] amounts() {
    double[] amounts = new double[columns];
    for (int r = 0; r < rows.length; r++) {
      if (basic[r] < columns) {
        amounts[basic[r]] = Math.min(room[r], bound[basic[r]]);
      }
    }
    for (int variable = 0; variable < columns; variable++) {
      if (flipped[variable]) {
        amounts[variable] = bound[variable] - amounts[variable];
      }
    }
    return amounts;
  }
}
