package shelfful.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayerChoiceTest {
  private static final int CASES = 400;

  private static double chosen(SmallChoice small, double[] prices) {
    LayerChoice choice = new LayerChoice(small.problem, small.pool, prices, levels -> true);
    choice.better(0, 100_000);
    return choice.worth();
  }

  private static Prices settled(SmallChoice small) {
    Prices prices = new Prices(small.problem);
    prices.settle(small.pool, 80, 0);
    return prices;
  }

  @Test
  void findsWhatTryingEverythingFindsWhenFewContentsAreKnown() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 3);
      assertThat(chosen(small, settled(small).each()))
          .as("seed %d", seed)
          .isCloseTo(small.bestOfAll(), within(1e-5));
    }
  }

  @Test
  void neverClaimsMoreThanTryingEverythingAndSeldomFindsLessFromMany() {
    double found = 0;
    double best = 0;
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 9);
      double here = chosen(small, settled(small).each());
      assertThat(here).as("seed %d", seed).isLessThanOrEqualTo(small.bestOfAll() + 1e-9);
      found += here;
      best += small.bestOfAll();
    }
    assertThat(found).isGreaterThan(0.99 * best);
  }

  /** Weak duality: whatever the prices, their limit is no less than the best choice. */
  @Test
  void theLimitOfThePricesIsNeverBelowTheBestChoice() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      double best = small.bestOfAll();
      assertThat(settled(small).limit()).as("seed %d", seed).isGreaterThanOrEqualTo(best - 1e-9);
    }
  }

  @Test
  void takesOnlyStacksThatTheCheckAllows() {
    SmallChoice small = new SmallChoice(5, 6);
    LayerChoice choice =
        new LayerChoice(
            small.problem,
            small.pool,
            settled(small).each(),
            levels -> levels.stream().mapToInt(List::size).sum() <= 1);
    List<List<ChosenLevel>> levels = choice.better(0, 100_000);
    assertThat(levels.stream().mapToInt(List::size).sum()).isEqualTo(1);
  }

  @Test
  void saysNothingWhenNothingBetterIsThere() {
    SmallChoice small = new SmallChoice(7, 3);
    LayerChoice choice =
        new LayerChoice(small.problem, small.pool, settled(small).each(), levels -> true);
    assertThat(choice.better(small.bestOfAll(), 100_000)).isNull();
  }
}
