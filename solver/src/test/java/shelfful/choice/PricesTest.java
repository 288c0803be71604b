package shelfful.choice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PricesTest {
  private static final int CASES = 400;

  /** Weak duality: whatever the prices, their limit is no less than the best choice. */
  @Test
  void theLimitOfThePricesIsNeverBelowTheBestChoice() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      Prices prices = new Prices(small.problem);
      prices.settle(small.pool, 80, 0);
      assertThat(prices.limit())
          .as("seed %d", seed)
          .isGreaterThanOrEqualTo(small.bestOfAll() - 1e-9);
    }
  }
}
