package shelfful.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FewLayersAnewTest {
  private static final long[] TAKES = {80_000, 120_000, 180_000};

  @Test
  void findsTheBestPairAsTryingEveryPairDoes() {
    for (int seed = 0; seed < 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      SmallChoice small = new SmallChoice(seed, 12);
      KindWorth worth = small.problem.worth();
      int[] used = {random.nextInt(3), random.nextInt(3), random.nextInt(3)};
      long room = 150_000 + random.nextInt(200_000);
      OpenLevel level = new OpenLevel(0, random.nextBoolean(), TAKES, 0, new int[] {0});
      List<KnownLayer> known = new ArrayList<>(small.pool.under(0));
      if (level.onTop()) {
        known.addAll(small.pool.onTop(0));
      }
      double best = worth.of(used);
      double atLeast = best;
      for (KnownLayer a : known) {
        for (KnownLayer b : known) {
          if (level.takes(a) + level.takes(b) <= room) {
            best = Math.max(best, worth.of(sum(used, a, b)));
          }
        }
      }
      List<KnownLayer> found =
          new FewLayersAnew(worth, small.pool, List.of(level, level), used, new long[] {room})
              .better(atLeast, List.of(new int[3], new int[3]));
      double here = found == null ? atLeast : worth.of(sum(used, found.get(0), found.get(1)));
      assertThat(here).as("seed %d", seed).isCloseTo(best, within(1e-9));
    }
  }

  @Test
  void findsTheBestThreeAsTryingAllDoes() {
    for (int seed = 0; seed < 200; seed++) {
      SmallChoice small = new SmallChoice(seed, 6);
      KindWorth worth = small.problem.worth();
      OpenLevel level = new OpenLevel(0, false, TAKES, 0, new int[] {0});
      long room = 250_000 + 10_000L * (seed % 20);
      List<KnownLayer> known = small.pool.under(0);
      double best = 0;
      for (KnownLayer a : known) {
        for (KnownLayer b : known) {
          for (KnownLayer c : known) {
            boolean fits = level.takes(a) + level.takes(b) + level.takes(c) <= room;
            best = fits ? Math.max(best, worth.of(sum(new int[3], a, b, c))) : best;
          }
        }
      }
      List<KnownLayer> found =
          new FewLayersAnew(
                  worth, small.pool, List.of(level, level, level), new int[3], new long[] {room})
              .better(0, List.of(new int[3], new int[3], new int[3]));
      double here = 0;
      if (found != null) {
        here = worth.of(sum(new int[3], found.get(0), found.get(1), found.get(2)));
      }
      assertThat(here).as("seed %d", seed).isCloseTo(best, within(1e-9));
    }
  }

  @Test
  void keepsToTheRoomOfEveryWayUp() {
    for (int seed = 0; seed < 100; seed++) {
      SmallChoice small = new SmallChoice(seed, 12);
      OpenLevel level = new OpenLevel(0, false, TAKES, 0, new int[] {0, 1});
      long[] room = {400_000, 210_000};
      List<OpenLevel> three = List.of(level, level, level);
      List<KnownLayer> found =
          new FewLayersAnew(small.problem.worth(), small.pool, three, new int[3], room)
              .better(0, List.of(new int[3], new int[3], new int[3]));
      if (found != null) {
        assertThat(found.stream().mapToLong(level::takes).sum()).isLessThanOrEqualTo(room[1]);
      }
    }
  }

  @Test
  void takesTheBestOfThoseThatCanStand() {
    int refused = 0;
    for (int seed = 0; seed < 200; seed++) {
      SmallChoice small = new SmallChoice(seed, 5);
      KindWorth worth = small.problem.worth();
      int odd = seed % 2;
      List<KnownLayer> known = small.pool.under(0);
      double best = 0;
      for (KnownLayer a : known) {
        for (KnownLayer b : known) {
          boolean stands = (a.heightClass() + b.heightClass()) % 2 == odd;
          best = stands ? Math.max(best, worth.of(sum(new int[3], a, b))) : best;
        }
      }
      OpenLevel level = new OpenLevel(0, false, TAKES, 0, new int[] {0});
      FewLayersAnew few =
          new FewLayersAnew(
              worth, small.pool, List.of(level, level), new int[3], new long[] {400_000});
      int[] asked = {0};
      List<KnownLayer> found =
          few.better(
              0,
              List.of(new int[3], new int[3]),
              contents -> {
                boolean stands =
                    (contents.get(0).heightClass() + contents.get(1).heightClass()) % 2 == odd;
                asked[0] += stands ? 0 : 1;
                return stands;
              });
      refused += asked[0];
      // It gives up after many refusals, so only what it looked through wholly is compared.
      if (asked[0] < 30) {
        double here = found == null ? 0 : worth.of(sum(new int[3], found.get(0), found.get(1)));
        assertThat(here).as("seed %d", seed).isCloseTo(best, within(1e-9));
      }
    }
    assertThat(refused).isPositive();
  }

  private static int[] sum(int[] used, KnownLayer... layers) {
    int[] sum = used.clone();
    for (KnownLayer layer : layers) {
      for (int kind = 0; kind < sum.length; kind++) {
        sum[kind] += layer.counts()[kind];
      }
    }
    return sum;
  }
}
