package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A linear program is solved when amounts that keep the limits are worth what the prices prove. */
class SmallProgramTest {
  @Test
  void amountsKeepTheLimitsAndAreWorthWhatThePricesProve() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      check(random, 1 + random.nextInt(12), random.nextInt(8));
    }
  }

  private static void check(Random random, int columns, int limits) {
    double[] worth = random.doubles(columns, 0, 5).toArray();
    double[] bound = random.ints(columns, 0, 9).asDoubleStream().toArray();
    double[] rooms = random.doubles(limits, 0, 40).toArray();
    double[][] shares = new double[limits][];
    for (int r = 0; r < limits; r++) {
      shares[r] = random.doubles(columns, 0, 9).map(x -> x < 3 ? 0 : x).toArray();
    }
    SmallProgram program = new SmallProgram(worth, bound, shares, rooms);
    program.solve();
    double[] amounts = program.amounts();
    double[] prices = program.prices();
    double primal = 0;
    double dual = 0;
    for (int r = 0; r < limits; r++) {
      double taken = 0;
      for (int j = 0; j < columns; j++) {
        taken += shares[r][j] * amounts[j];
      }
      assertThat(taken).isLessThanOrEqualTo(rooms[r] + 1e-6);
      dual += prices[r] * rooms[r];
    }
    for (int j = 0; j < columns; j++) {
      assertThat(amounts[j]).isBetween(-1e-9, bound[j] + 1e-9);
      primal += worth[j] * amounts[j];
      double left = worth[j];
      for (int r = 0; r < limits; r++) {
        left -= prices[r] * shares[r][j];
      }
      dual += bound[j] * Math.max(0, left);
    }
    assertThat(primal).isCloseTo(dual, within(1e-6));
  }
}
