package shelfful.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/**
 * Draws lists: batches of 2 to 12 pieces in the shares asked for, until there are so many pieces.
 */
final class SampleList {
  static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final int MOST_IN_A_BATCH = 12;

  private final Random random;
  private final Map<String, Integer> shares = new TreeMap<>();
  private int mustGo;
  private int due;

  SampleList(long seed) {
    random = new Random(seed);
  }

  /** A form with its share of the pieces, against the other forms' shares. */
  SampleList of(String form, int share) {
    shares.put(form, share);
    return this;
  }

  /** A bit of everything that a tableware pottery makes. */
  SampleList mixed() {
    return of("cup", 8)
        .of("mug", 22)
        .of("tumbler", 12)
        .of("bowl", 16)
        .of("big-bowl", 3)
        .of("side-plate", 7)
        .of("plate", 4)
        .of("oval-dish", 6)
        .of("platter", 2)
        .of("jar", 5)
        .of("bud-vase", 6)
        .of("vase", 2)
        .of("planter", 4)
        .of("jug", 3);
  }

  /** So many batches in a hundred must go in, so many more are due within two weeks. */
  SampleList promised(int mustGoPercent, int duePercent) {
    mustGo = mustGoPercent;
    due = duePercent;
    return this;
  }

  List<Batch> pieces(int count) {
    List<Batch> batches = new ArrayList<>();
    Map<String, Integer> drawn = new TreeMap<>();
    int left = count;
    while (left > 0) {
      String form = furthestBehind(drawn);
      int quantity = Math.min(left, 2 + random.nextInt(MOST_IN_A_BATCH - 1));
      batches.add(batch(batches.size() + 1, form, quantity));
      drawn.merge(form, quantity, Integer::sum);
      left -= quantity;
    }
    return batches;
  }

  /** The form whose pieces lag most behind its share, so that even short lists keep the shares. */
  private String furthestBehind(Map<String, Integer> drawn) {
    String found = null;
    double least = Double.POSITIVE_INFINITY;
    for (Map.Entry<String, Integer> share : shares.entrySet()) {
      double reached =
          (drawn.getOrDefault(share.getKey(), 0) + 6 * random.nextDouble()) / share.getValue();
      if (reached < least) {
        least = reached;
        found = share.getKey();
      }
    }
    return found;
  }

  private Batch batch(int number, String form, int quantity) {
    List<String> glazes = SampleGlazes.SHARES;
    String glaze = glazes.get(random.nextInt(glazes.size()));
    int fate = random.nextInt(100);
    boolean isDue = fate >= mustGo && fate < mustGo + due;
    return new Batch(
        "B" + number,
        form,
        Optional.of(glaze),
        quantity,
        Stage.GLAZED,
        Optional.empty(),
        fate < mustGo,
        random.nextInt(8) == 0 ? 2 : 1,
        isDue ? Optional.of(DAY.plusDays(random.nextInt(14))) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        random.nextInt(6) == 0 ? LidPlace.BESIDE : LidPlace.ON);
  }
}
