package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.packing.BodyKind;
import shelfful.packing.Effort;
import shelfful.packing.EvenSpacer;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.packing.ShelfAnswer;
import shelfful.packing.ShelfPacker;
import shelfful.packing.ShelfQuestion;
import shelfful.packing.Spare;
import shelfful.planning.ShelfSpaces.NumberedSpace;

/**
 * Every shelf answer of a run. A setting once found is kept for the run, so a sketch that was found
 * to stand stands whenever it is looked at again. What the packer found no setting for is refused,
 * and so is all that holds at least as much, until the search tries harder. What looks hopelessly
 * full is declined without asking and without being remembered: it may be asked about later, when
 * fuller shelves have been found.
 */
final class ShelfAnswers {
  /**
   * A shelf may be this much fuller than any before in the same space before the packer is not even
   * asked.
   */
  private static final double FULLER = 0.035;

  /** Covered shares below this are always worth asking. */
  private static final double NOT_YET_FULL = 0.78;

  /** So few pieces are always worth asking: one wide dish alone can cover nearly all of a shelf. */
  private static final int FEW = 3;

  /** A space number for settings found anywhere. */
  private static final int ANYWHERE = -1;

  private final List<BodyKind> bodies;
  private final double[] roomTaken;
  private final long[] grams;
  private final double[][] gaps;
  private final long seed;
  private final BooleanSupplier stop;
  private final ShelfPacker packer;
  private final Map<Key, Packed> packed = new HashMap<>();
  private final Map<Integer, List<int[]>> refused = new HashMap<>();

  /** How many of those refused are known from other loads, the first in each list. */
  private final Map<Integer, Integer> refusedBefore = new HashMap<>();

  private final Map<Integer, List<Key>> fullContents = new HashMap<>();
  private final Map<Key, Packed> elsewhere = new HashMap<>();
  private final Map<Integer, Double> fullest = new HashMap<>();
  private Effort effort = Effort.HASTY;
  private long asked;
  private long fromMemory;

  ShelfAnswers(ReadyWare ware, double[][] gaps, long seed, BooleanSupplier stop) {
    this.grams = heaviest(ware);
    this.roomTaken = Appeal.roomTaken(ware.kinds(), gaps);
    this.bodies = ware.kinds().stream().map(WareKind::body).toList();
    this.gaps = gaps;
    this.seed = seed;
    this.stop = stop;
    this.packer = new ShelfPacker(stop);
  }

  /** The heaviest piece or pile of each kind. */
  private static long[] heaviest(ReadyWare ware) {
    long[] grams = new long[ware.kinds().size()];
    for (Lot lot : ware.lots()) {
      int kind = lot.kind().index();
      grams[kind] = Math.max(grams[kind], lot.grams());
    }
    return grams;
  }

  /** A question: a space by number, and how many of each kind. */
  private record Key(int space, int[] counts, int hash) {
    static Key of(int space, int[] counts) {
      return new Key(space, counts, 31 * space + Arrays.hashCode(counts));
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key that && that.space == space && Arrays.equals(that.counts, counts);
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
      fromMemory++;
      return known;
    }
    Packed less = partOfOther(key);
    if (less != null) {
      fromMemory++;
      packed.put(key, less);
      return less;
    }
    double covered = covered(counts);
    if (covered > mostCovered(space) && Arrays.stream(counts).sum() > FEW) {
      return null;
    }
    asked++;
    PresentKinds present = PresentKinds.of(counts, space.fixed());
    ShelfQuestion question = question(space, present);
    long questionSeed = seed * 0x9E3779B97F4A7C15L + key.hash;
    boolean bare = space.fixed().isEmpty();
    Packed hint = near != null || !bare ? near : elsewhere.get(Key.of(ANYWHERE, key.counts));
    ShelfAnswer answer =
        packer.pack(
            question,
            effort(space, counts),
            questionSeed,
            hint == null ? List.of() : present.ask(hint.bodies()));
    if (answer instanceof Packed found) {
      Packed setting = new Packed(present.answer(found.bodies()), found.spare());
      if (!space.carries(setting.bodies(), grams)) {
        refuse(key);
        return null;
      }
      packed.put(key, setting);
      keep(key);
      if (bare) {
        elsewhere.put(Key.of(ANYWHERE, key.counts), setting);
      }
      fullest.merge(space.number(), covered / space.area(), Math::max);
      return setting;
    }
    if (!stop.getAsBoolean()) {
      refuse(key);
    }
    return null;
  }

  /** Whether a question was never asked and follows from no other. */
  boolean isOpen(NumberedSpace space, int[] counts) {
    Key key = Key.of(space.number(), counts);
    return !packed.containsKey(key) && !isRefused(key) && holding(key) == null;
  }

  /** Whether a question was asked for nothing, or follows from one that was. */
  boolean isRefused(NumberedSpace space, int[] counts) {
    Key key = Key.of(space.number(), counts);
    return !packed.containsKey(key) && isRefused(key);
  }

  /** A content met in the same space that holds all that is asked for, or null. */
  private Key holding(Key key) {
    for (Key more : fullContents.getOrDefault(key.space, List.of())) {
      if (holds(more.counts, key.counts)) {
        return more;
      }
    }
    return null;
  }

  private void refuse(Key key) {
    refused.computeIfAbsent(key.space, s -> new ArrayList<>()).add(key.counts);
  }

  /** A setting of a content that holds all that is asked for, less what is too much; or null. */
  private Packed partOfOther(Key key) {
    Key more = holding(key);
    if (more == null) {
      return null;
    }
    int[] left = key.counts.clone();
    Packed whole = packed.get(more);
    List<Placed> bodies = whole.bodies().stream().filter(body -> left[body.kind()]-- > 0).toList();
    return new Packed(bodies, whole.spare());
  }

  /** Remembers a content as one that others may be part of. */
  private void keep(Key key) {
    List<Key> kept = fullContents.computeIfAbsent(key.space, space -> new ArrayList<>());
    kept.removeIf(less -> holds(key.counts, less.counts));
    kept.add(key);
  }

  /** Takes over every setting that another run of the same spaces and kinds has found. */
  void learnFrom(ShelfAnswers other) {
    other.packed.forEach(
        (key, setting) -> {
          if (packed.putIfAbsent(key, setting) == null && holding(key) == null) {
            keep(key);
          }
        });
    other.elsewhere.forEach(elsewhere::putIfAbsent);
    other.fullest.forEach((space, share) -> fullest.merge(space, share, Math::max));
  }

  /** Few pieces among many that stay: the last hole is worth looking for, and cheap to look for. */
  private Effort effort(NumberedSpace space, int[] counts) {
    boolean hole = !space.fixed().isEmpty() && Arrays.stream(counts).sum() <= FEW;
    return hole ? Effort.NORMAL : effort;
  }

  private ShelfQuestion question(NumberedSpace space, PresentKinds present) {
    return new ShelfQuestion(
        space.space(),
        present.of(bodies),
        present.counts(),
        present.of(gaps),
        present.ask(space.fixed()));
  }

  /** A setting of the same bodies with the smallest gap as large as the spacer can make it. */
  Packed spread(NumberedSpace space, int[] counts, Packed found, EvenSpacer spacer) {
    PresentKinds present = PresentKinds.of(counts, space.fixed());
    Packed start = new Packed(present.ask(found.bodies()), found.spare());
    Packed even = spacer.spread(question(space, present), start, Effort.QUICK, seed);
    List<Placed> standing = present.answer(even.bodies());
    return space.carries(standing, grams) ? new Packed(standing, even.spare()) : found;
  }

  /**
   * Bodies that stand somewhere as a setting of a space, if they keep every clearance but for what
   * writing them to whole micrometres may have cost.
   */
  Optional<Packed> valid(NumberedSpace space, List<Placed> standing) {
    int[] counts = new int[bodies.size()];
    standing.forEach(body -> counts[body.kind()]++);
    PresentKinds present = PresentKinds.of(counts, space.fixed());
    double spare = Spare.of(question(space, present), present.ask(standing));
    return spare < -Margin.FOR_ROUNDING || !space.carries(standing, grams)
        ? Optional.empty()
        : Optional.of(new Packed(standing, Math.max(0, spare)));
  }

  /** Takes over a setting found elsewhere, unless there is one already. */
  void learn(NumberedSpace space, int[] counts, Packed setting) {
    Key key = Key.of(space.number(), counts.clone());
    if (packed.putIfAbsent(key, setting) == null) {
      keep(key);
    }
  }

  /** Takes over what fits by a book, unless a shelf of this load would not carry it. */
  boolean takesOver(NumberedSpace space, BookedShelves.Known known) {
    if (!space.carries(known.setting().bodies(), grams)) {
      return false;
    }
    learn(space, known.counts(), known.setting());
    fullest.merge(space.number(), covered(known.counts()) / space.area(), Math::max);
    return true;
  }

  /** All that was found to fit in a space and is no part of another content. */
  List<BookedShelves.Known> fullest(NumberedSpace space) {
    return fullContents.getOrDefault(space.number(), List.of()).stream()
        .map(key -> new BookedShelves.Known(key.counts, packed.get(key)))
        .toList();
  }

  /** Refuses what no setting was found for in another load. */
  void refuse(NumberedSpace space, List<int[]> others) {
    refused.computeIfAbsent(space.number(), any -> new ArrayList<>()).addAll(0, others);
    refusedBefore.merge(space.number(), others.size(), Integer::sum);
  }

  /** What was refused in this load. */
  List<int[]> refusedSince(NumberedSpace space) {
    List<int[]> all = refused.getOrDefault(space.number(), List.of());
    return all.subList(refusedBefore.getOrDefault(space.number(), 0), all.size());
  }

  /** The room that may be taken before the packer is not even asked, in square millimetres. */
  double mostCovered(NumberedSpace space) {
    double share = fullest.getOrDefault(space.number(), 0.0) + FULLER;
    return Math.max(NOT_YET_FULL, share) * space.area();
  }

  /** How hard the packer is asked to try now. */
  Effort effort() {
    return effort;
  }

  /** The room that so many of each kind take, in square millimetres. */
  double covered(int[] counts) {
    double covered = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      covered += counts[kind] * roomTaken[kind];
    }
    return covered;
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
    refusedBefore.clear();
  }

  /** How many questions went to the packer. */
  long asked() {
    return asked;
  }

  /** How many questions were answered from memory. */
  long fromMemory() {
    return fromMemory;
  }

  /** How many settings the packer relaxed for its answers: a machine-free measure of work. */
  long relaxings() {
    return packer.minimisations();
  }
}
