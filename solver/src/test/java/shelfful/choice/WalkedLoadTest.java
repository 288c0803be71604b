package shelfful.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WalkedLoadTest {
  private static final int CASES = 200;

  @Test
  void goesBackToTheMarkWhateverWasDoneSince() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      Random random = new Random(seed);
      WalkedLoad load = new WalkedLoad(small.problem);
      change(load, small, random);
      load.mark();
      double worth = load.worth();
      int levels = load.levels();
      long[] room = rooms(load, small);
      change(load, small, random);
      load.back();
      assertThat(load.worth()).as("seed %d", seed).isEqualTo(worth);
      assertThat(load.levels()).as("seed %d", seed).isEqualTo(levels);
      assertThat(rooms(load, small)).as("seed %d", seed).isEqualTo(room);
    }
  }

  @Test
  void whatAContentAddsIsTheDifferenceItMakes() {
    for (int seed = 0; seed < CASES; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      WalkedLoad load = new WalkedLoad(small.problem);
      change(load, small, new Random(seed));
      for (KnownLayer content : small.pool.under(0)) {
        double before = load.worth();
        double adds = load.adds(content);
        load.use(content, 1);
        assertThat(load.worth() - before).as("seed %d", seed).isEqualTo(adds);
        load.use(content, -1);
      }
    }
  }

  @Test
  void keepsTheLastLevelUnderAnotherColumn() {
    ChoiceProblem problem =
        new ChoiceProblem(
            List.of(column(0, -1), column(1, 0)),
            new KindWorth(List.of(new double[] {1, 1, 1, 1})),
            1,
            2);
    WalkedLoad load = new WalkedLoad(problem);
    KnownLayer one = new KnownLayer(new int[] {1}, 0);
    assertThat(load.mayGrow(1)).isFalse();
    load.putOn(0, new ChosenLevel(0, false, List.of(one)));
    assertThat(load.mayGrow(1)).isTrue();
    load.putOn(1, new ChosenLevel(0, true, List.of(one)));
    assertThat(load.mayBeClosed(0)).isFalse();
    assertThat(load.takeOff(0)).isFalse();
    assertThat(load.takeOff(1)).isTrue();
    assertThat(load.takeOff(0)).isTrue();
    assertThat(load.levels()).isZero();
  }

  private static StackColumn column(int spot, int below) {
    return new StackColumn(
        new int[] {spot}, below, 500_000, new long[] {100_000}, new long[] {80_000}, 4);
  }

  private static long[] rooms(WalkedLoad load, SmallChoice small) {
    long[] rooms = new long[small.problem.columns().size()];
    for (int c = 0; c < rooms.length; c++) {
      rooms[c] = load.room(c);
    }
    return rooms;
  }

  private static void change(WalkedLoad load, SmallChoice small, Random random) {
    LevelDraw draw = new LevelDraw(small.problem, small.pool, load);
    for (int i = 0; i < 12; i++) {
      if (random.nextInt(3) == 0 && load.levels() > 0) {
        load.takeOff(random.nextInt(load.levels()));
      } else {
        draw.putOn(random.nextInt(small.problem.columns().size()), 0.3, random);
      }
    }
  }
}
