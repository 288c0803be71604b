package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.BisqueWays;
import shelfful.fixture.RandomDice;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;

/**
 * Which piles to build, in kilns so small that every choice can be tried: drums so wide that each
 * pile has a shelf of its own, so the question is only how high each is.
 */
class TowerChoiceTest {
  private static final long STEPS = 80;
  private static final int SHELVES = 5;

  /** A form, how many there are, and how it is piled; millimetres. */
  private record Drums(int height, int increment, int mostHigh, int count) {
    int height(int high) {
      return height + (high - 1) * increment;
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void asManyAsAnyChoiceOfPilesHolds(long seed) {
    RandomDice dice = new RandomDice(seed);
    List<Drums> drums = new ArrayList<>();
    Scene scene = new Scene().firing(bisque());
    for (int form = 0; form < dice.whole(1, 2); form++) {
      int height = dice.whole(4, 9) * 10;
      Drums one =
          new Drums(height, dice.whole(1, height / 10) * 10, dice.whole(2, 4), dice.whole(4, 9));
      drums.add(one);
      String id = "f" + form;
      scene.form(piled(id, one)).batch("B" + form, id, one.count()).but(PlainBatch::dry);
    }
    Load load = scene.plan(STEPS);
    assertThat(load.placed()).isEqualTo(most(drums, new int[drums.size()], new ArrayList<>(), 0));
  }

  private static Firing bisque() {
    return new Firing("K", FiringKind.BISQUE, new Cone("04"), 0, Atmosphere.OXIDATION);
  }

  private static Form piled(String id, Drums drums) {
    Form cup = Scene.drum(id, 355, drums.height());
    return BisqueWays.with(cup, BisqueWays.piled(drums.mostHigh(), drums.increment()));
  }

  /** Tries to add every pile that comes no earlier than the last; the most pieces that stand. */
  private static int most(List<Drums> drums, int[] used, List<Integer> heights, int from) {
    int most = 0;
    for (int count : used) {
      most += count;
    }
    if (heights.size() == SHELVES) {
      return most;
    }
    int choice = -1;
    for (int form = 0; form < drums.size(); form++) {
      for (int high = 1; high <= drums.get(form).mostHigh(); high++) {
        choice++;
        if (choice < from || used[form] + high > drums.get(form).count()) {
          continue;
        }
        List<Integer> more = new ArrayList<>(heights);
        more.add(drums.get(form).height(high));
        if (PlannerOnTinyLoadsTest.stands(more)) {
          used[form] += high;
          most = Math.max(most, most(drums, used, more, choice));
          used[form] -= high;
        }
      }
    }
    return most;
  }
}
