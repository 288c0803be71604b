package shelfful.packing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is kept in lists from one evaluation to the next must never be missed by them: bodies that
 * move and turn a little at a time have the energy that a first look at the same places finds.
 */
class NeighboursTest {
  private static final int STEPS = 60;
  private static final double SPREAD = 150;
  private static final double FURTHEST = 8;

  /** Far over the rounding of some hundred terms, far under a contact that was missed. */
  private static final double SAME = 1e-9;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void followBodiesThatMoveAndTurn(long seed) {
    RandomQuestions questions = new RandomQuestions(seed);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 10; i++) {
      ShelfModel model = new ShelfModel(questions.next());
      LayoutEnergy followed = new LayoutEnergy(model);
      double[] at = new double[followed.unknowns()];
      for (int j = 0; j < at.length; j++) {
        at[j] = random.nextDouble(-SPREAD, SPREAD);
      }
      for (int step = 0; step < STEPS; step++) {
        compare(model, followed, at);
        move(at, i % 2 == 0 ? 0 : 2 * model.bodies, random);
      }
    }
  }

  private static void compare(ShelfModel model, LayoutEnergy followed, double[] at) {
    double[] gradient = new double[at.length];
    double[] expected = new double[at.length];
    LayoutEnergy atFirstSight = new LayoutEnergy(model);
    double energy = atFirstSight.at(at, expected);
    assertEquals(energy, followed.at(at, gradient), SAME * Math.max(1, energy));
    assertArrayEquals(expected, gradient, SAME * Math.max(1, energy));
    assertEquals(atFirstSight.fits(), followed.fits());
  }

  /** A little of each; but every other question's bodies turn where they stand, and go on so. */
  private static void move(double[] at, int from, SplittableRandom random) {
    for (int j = from; j < at.length; j++) {
      double back = from > 0 ? 0 : -FURTHEST;
      at[j] += random.nextInt(4) == 0 ? random.nextDouble(back, FURTHEST) : 0;
    }
  }
}
