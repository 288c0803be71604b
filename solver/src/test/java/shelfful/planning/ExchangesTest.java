package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ExchangesTest {
  private static final int KINDS = 4;
  private static final int EVERY = 100_000;

  private final SplittableRandom random = new SplittableRandom(5);
  private final int[] counts = new int[KINDS];
  private final int[] most = new int[KINDS];
  private final boolean[] mayCome = new boolean[KINDS];
  private final double[] prices = new double[KINDS];
  private final double[] room = new double[KINDS];

  @Test
  void findsJustWhatGoingThroughEveryContentFinds() {
    for (int round = 0; round < 200; round++) {
      draw();
      List<String> expected = new ArrayList<>();
      everyContent(new int[KINDS], 0, expected);
      List<String> found =
          new Exchanges(counts, mayCome, most, prices, room)
              .bestFirst(EVERY).stream().map(Arrays::toString).toList();
      assertThat(found)
          .as("round %d", round)
          .containsExactlyInAnyOrderElementsOf(expected)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void beginsWithWhatGainsMostBeyondTheWorthOfItsRoom() {
    for (int round = 0; round < 200; round++) {
      draw();
      double before = sum(counts, prices);
      double roomPrice = before == 0 ? 0 : before / sum(counts, room);
      List<Double> gains =
          new Exchanges(counts, mayCome, most, prices, room)
              .bestFirst(10).stream()
                  .map(content -> sum(content, prices) - roomPrice * sum(content, room))
                  .toList();
      for (int i = 1; i < gains.size(); i++) {
        assertThat(gains.get(i)).isLessThanOrEqualTo(gains.get(i - 1) + 1e-9);
      }
    }
  }

  private void draw() {
    for (int kind = 0; kind < KINDS; kind++) {
      most[kind] = random.nextInt(4);
      counts[kind] = random.nextInt(most[kind] + 1);
      mayCome[kind] = counts[kind] < most[kind] && random.nextInt(4) > 0;
      prices[kind] = random.nextInt(4) / 2.0;
      room[kind] = 1 + 5 * random.nextDouble();
    }
  }

  /** All contents of up to two pieces fewer and one or two others more that are dearer. */
  private void everyContent(int[] content, int kind, List<String> into) {
    if (kind < KINDS) {
      for (int count = 0; count <= most[kind]; count++) {
        content[kind] = count;
        everyContent(content, kind + 1, into);
      }
      return;
    }
    int out = 0;
    int in = 0;
    boolean may = true;
    for (int k = 0; k < KINDS; k++) {
      out += Math.max(0, counts[k] - content[k]);
      in += Math.max(0, content[k] - counts[k]);
      may &= content[k] <= counts[k] || mayCome[k];
    }
    if (may && out <= 2 && in >= 1 && in <= 2 && sum(content, prices) > sum(counts, prices)) {
      into.add(Arrays.toString(content));
    }
  }

  private static double sum(int[] content, double[] figures) {
    double sum = 0;
    for (int kind = 0; kind < KINDS; kind++) {
      sum += content[kind] * figures[kind];
    }
    return sum;
  }
}
