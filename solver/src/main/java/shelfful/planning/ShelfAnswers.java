package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import shelfful.packing.BodyKind;
import shelfful.packing.Effort;
import shelfful.packing.Packed;
import shelfful.packing.ShelfAnswer;
import shelfful.packing.ShelfPacker;
import shelfful.packing.ShelfQuestion;
import shelfful.planning.ShelfSpaces.NumberedSpace;

/**
 * Every shelf answer of a run, each asked once. The first answer to a question is kept, so that whether a layer
 * fits is a pure function of what stands on it; what holds too much for a smaller question holds too much for a
 * larger one.
 */
final class ShelfAnswers {
  private final List<BodyKind> bodies;
  private final double[][] gaps;
  private final long seed;
  private final BooleanSupplier stop;
  private final ShelfPacker packer;
  private final Map<Key, Packed> packed = new HashMap<>();
  private final Map<Integer, List<int[]>> refused = new HashMap<>();
  private Effort effort = Effort.QUICK;
  private long asked;

  ShelfAnswers(List<WareKind> kinds, double[][] gaps, long seed, BooleanSupplier stop) {
    this.bodies = kinds.stream().map(WareKind::body).toList();
    this.gaps = gaps;
    this.seed = seed;
    this.stop = stop;
    this.packer = new ShelfPacker(stop);
  }

  /** A question: a space by number, and how many of each kind. */
  private record Key(int space, int[] counts, int hash) {
    static Key of(int space, int[] counts) {
      return new Key(space, counts, 31 * space + Arrays.hashCode(counts));
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key that
          && that.space == space
          && Arrays.equals(that.counts, counts);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /**
   * A setting of so many of each kind in a space, or null when none was found.
   *
   * @param near a setting of nearly the same, or null; only a first question looks at it
   */
  Packed ask(NumberedSpace space, int[] counts, Packed near) {
    Key key = Key.of(space.number(), counts.clone());
    Packed known = packed.get(key);
    if (known != null || isRefused(key)) {
      return known;
    }
    asked++;
    ShelfQuestion question = question(space, counts);
    long questionSeed = seed * 0x9E3779B97F4A7C15L + key.hash;
    ShelfAnswer answer =
        packer.pack(question, effort, questionSeed, near == null ? List.of() : near.bodies());
    if (answer instanceof Packed setting) {
      packed.put(key, setting);
      return setting;
    }
    if (!stop.getAsBoolean()) {
      refused.computeIfAbsent(key.space, s -> new ArrayList<>()).add(key.counts);
    }
    return null;
  }

  ShelfQuestion question(NumberedSpace space, int[] counts) {
    return new ShelfQuestion(space.space(), bodies, counts, gaps);
  }

  /** Already packed or null; asks nothing. */
  Packed known(NumberedSpace space, int[] counts) {
    return packed.get(Key.of(space.number(), counts));
  }

  private boolean isRefused(Key key) {
    for (int[] less : refused.getOrDefault(key.space, List.of())) {
      if (holds(key.counts, less)) {
        return true;
      }
    }
    return false;
  }

  private static boolean holds(int[] more, int[] less) {
    for (int i = 0; i < less.length; i++) {
      if (more[i] < less[i]) {
        return false;
      }
    }
    return true;
  }

  /** From now on tries this hard, and gives what was refused with less effort another chance. */
  void tryHarder(Effort harder) {
    effort = harder;
    refused.clear();
  }

  /** How many questions went to the packer. */
  long asked() {
    return asked;
  }
}
