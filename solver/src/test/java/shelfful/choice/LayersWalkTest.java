package shelfful.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LayersWalkTest {
  private static final int CASES = 300;
  private static final int STEPS = 800;
  private static final int STRETCHES = 5;

  private static LoadCheck plain(SmallChoice small) {
    return levels -> worth(small, levels);
  }

  private static List<List<ChosenLevel>> nothing(SmallChoice small) {
    List<List<ChosenLevel>> columns = new ArrayList<>();
    small.problem.columns().forEach(column -> columns.add(List.of()));
    return columns;
  }

  private static List<List<ChosenLevel>> walked(SmallChoice small, double known, LoadCheck check) {
    LayersWalk walk = new LayersWalk(small.problem, small.pool, check);
    return walk.better(known, nothing(small), STEPS, new Random(1));
  }

  /** Added up here from nothing but the counts. */
  private static double worth(SmallChoice small, List<List<ChosenLevel>> levels) {
    int[] used = new int[small.problem.worth().kinds()];
    for (List<ChosenLevel> column : levels) {
      for (ChosenLevel level : column) {
        for (KnownLayer content : level.contents()) {
          for (int kind = 0; kind < used.length; kind++) {
            used[kind] += content.counts()[kind];
          }
        }
      }
    }
    return small.problem.worthOf(used);
  }

  private static long height(StackColumn column, List<ChosenLevel> levels) {
    return levels.stream()
        .mapToLong(l -> (l.onTop() ? column.top() : column.middle())[l.heightClass()])
        .sum();
  }

  private static double bestOfAWalk(SmallChoice small) {
    LayersWalk walk = new LayersWalk(small.problem, small.pool, plain(small));
    Random random = new Random(1);
    double best = 0;
    for (int stretch = 0; stretch < STRETCHES; stretch++) {
      List<List<ChosenLevel>> levels = walk.better(best, nothing(small), STEPS, random);
      best = levels == null ? best : worth(small, levels);
    }
    return best;
  }

  /** It is no proof of the best, so now and then it may miss a little. */
  @Test
  void findsWhatTryingEverythingFindsInNearlyAllCasesAndNeverMore() {
    double sum = 0;
    double best = 0;
    int missed = 0;
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 9);
      double found = bestOfAWalk(small);
      assertThat(found).as("seed %d", seed).isLessThanOrEqualTo(small.bestOfAll() + 1e-9);
      missed += found < small.bestOfAll() - 1e-9 ? 1 : 0;
      sum += found;
      best += small.bestOfAll();
    }
    assertThat(missed).isLessThanOrEqualTo(CASES / 50);
    assertThat(sum).isGreaterThan(0.998 * best);
  }

  @Test
  void keepsToTheHeightOfEveryWayUpAndBuildsNothingOverAClosingLevel() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 9);
      List<List<ChosenLevel>> levels = walked(small, 0, plain(small));
      for (int c = 0; levels != null && c < levels.size(); c++) {
        StackColumn column = small.problem.columns().get(c);
        List<ChosenLevel> own = levels.get(c);
        long height = height(column, own);
        int below = column.below();
        if (below >= 0 && !own.isEmpty()) {
          assertThat(levels.get(below)).as("seed %d", seed).isNotEmpty();
          assertThat(levels.get(below)).noneMatch(ChosenLevel::onTop);
          height += height(small.problem.columns().get(below), levels.get(below));
        }
        long capacity = small.problem.columns().get(Math.max(below, 0)).capacity();
        assertThat(height)
            .as("seed %d", seed)
            .isLessThanOrEqualTo(below < 0 ? column.capacity() : capacity);
        assertThat(own.subList(0, Math.max(0, own.size() - 1))).noneMatch(ChosenLevel::onTop);
        assertThat(own.size()).isLessThanOrEqualTo(column.mostLevels());
      }
    }
  }

  @Test
  void takesOnlyLoadsThatTheCheckAllows() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      List<List<ChosenLevel>> levels =
          walked(
              small,
              0,
              all ->
                  all.stream().mapToInt(List::size).sum() <= 1
                      ? worth(small, all)
                      : LoadCheck.CANNOT_STAND);
      if (levels != null) {
        assertThat(levels.stream().mapToInt(List::size).sum()).as("seed %d", seed).isEqualTo(1);
      }
    }
  }

  /** With rules by which one column may hold nothing the best of the other is found. */
  @Test
  void goesWhereTheCheckFindsMostAndNotWhereTheChoiceAloneWould() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      LoadCheck half = levels -> worth(small, levels.subList(0, 1));
      List<List<ChosenLevel>> levels = walked(small, 0, half);
      double found = levels == null ? 0 : half.worth(levels);
      double best = 0;
      for (KnownLayer content : small.pool.under(0)) {
        StackColumn column = small.problem.columns().get(0);
        boolean fits = column.middle()[content.heightClass()] <= column.capacity();
        best = Math.max(best, fits ? small.problem.worthOf(content.counts()) : 0);
      }
      assertThat(found).as("seed %d", seed).isGreaterThanOrEqualTo(best);
    }
  }

  @Test
  void saysNothingWhenNothingBetterIsThere() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      assertThat(walked(small, small.bestOfAll(), plain(small))).as("seed %d", seed).isNull();
    }
  }

  @Test
  void goesOnFromTheLoadItIsGivenWhenThatIsMuchBetter() {
    SmallChoice small = new SmallChoice(3, 9);
    List<List<ChosenLevel>> best = walked(small, 0, plain(small));
    LayersWalk walk = new LayersWalk(small.problem, small.pool, plain(small));
    double known = worth(small, best);
    walk.better(known, best, 0, new Random(1));
    assertThat(walk.now(known)).isEqualTo(best);
    assertThat(walk.now(known + 1)).isNull();
  }

  @Test
  void theSameChanceLeadsToTheSameLoad() {
    SmallChoice small = new SmallChoice(8, 9);
    assertThat(walked(small, 0, plain(small))).isEqualTo(walked(small, 0, plain(small)));
  }
}
