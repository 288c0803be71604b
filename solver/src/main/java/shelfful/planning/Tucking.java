package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import shelfful.planning.LoadAtHand.Berth;
import shelfful.planning.ShelfSpaces.NumberedSpace;

/**
 * Tucks in what was left of several loads: on one shelf after another pieces make way for some that
 * are left, and find a place on another shelf later, or pieces of two shelves change places. A
 * change that leaves more than before is made with a chance that falls with the loss and with time
 * (S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, "Optimization by simulated annealing", Science
 * 220, 1983). Each change costs a question to the packer, an exchange two.
 */
final class Tucking {
  /** A question to the packer takes as long as so many tries without one. */
  private static final int QUESTION = 16;

  /** At the beginning and at the end a loss of so many pieces is taken once in e times. */
  private static final double WARM = 0.25;

  private static final double COLD = 0.02;

  /** So many tries in a row that did not even ask end it. */
  private static final int IDLE = 20_000;

  /** One of so many changes is an exchange of two pieces. */
  private static final int EXCHANGES = 6;

  /** One of so many may put what is taller on a shelf than there is room for. */
  private static final int TALLER = 8;

  /** One of so many only puts something in where nothing is known to forbid that. */
  private static final int MERELY_IN = 4;

  private static final int MOST_OUT = 3;
  private static final int MOST_MORE = 3;

  private final List<LoadAtHand> loads;
  private final SharedLots lots;
  private final List<Berth> berths = new ArrayList<>();
  private final Random random;
  private final double piece;
  private long lost;

  /**
   * Ready to tuck in.
   *
   * @param lots of all loads, what is in them taken
   */
  Tucking(List<LoadAtHand> loads, SharedLots lots, long seed) {
    this.loads = List.copyOf(loads);
    this.lots = lots;
    this.random = new Random(seed);
    this.piece = lots.meanWorth();
    loads.forEach(load -> berths.addAll(load.berths()));
  }

  /**
   * Leaves the desks of the loads with the least left that was met; false when that is no less than
   * before.
   *
   * @param effort how many tries without a question, of which a question takes as long as several
   */
  boolean run(int effort, BooleanSupplier stop) {
    long left = lots.worthLeft();
    long least = left;
    List<LoadAtHand.State> best = null;
    int idle = 0;
    long spent = 0;
    while (!berths.isEmpty()
        && least > 0
        && spent < effort
        && idle < IDLE
        && !stop.getAsBoolean()) {
      double gone = spent / (double) effort;
      lost = Math.round(piece * (WARM * (1 - gone) + COLD) * Math.log(1 - random.nextDouble()));
      long before = questions();
      boolean changed = random.nextInt(EXCHANGES) == 0 ? exchange() : makeWay();
      long asked = questions() - before;
      spent += 1 + QUESTION * asked;
      idle = changed || asked > 0 ? 0 : idle + 1;
      left = changed ? lots.worthLeft() : left;
      if (left < least) {
        least = left;
        best = loads.stream().map(LoadAtHand::now).toList();
      }
    }
    for (int i = 0; best != null && i < loads.size(); i++) {
      loads.get(i).keep(best.get(i));
    }
    return best != null;
  }

  private long questions() {
    long sum = 0;
    for (LoadAtHand load : loads) {
      sum += load.answers().asked();
    }
    return sum;
  }

  private Berth any() {
    return berths.get(random.nextInt(berths.size()));
  }

  /** Puts something that is left on a shelf, and takes off what is in its way. */
  private boolean makeWay() {
    Berth berth = any();
    List<Lot> may = mayComeIn(berth);
    if (may.isEmpty()) {
      return false;
    }
    Lot in = may.get(random.nextInt(may.size()));
    int[] counts = berth.counts().clone();
    counts[in.index()]++;
    LoadAtHand load = berth.load();
    NumberedSpace space = berth.space(counts);
    boolean full = load.answers().isRefused(space, load.byKind(counts));
    long gain = in.worth();
    if (full || random.nextInt(MERELY_IN) > 0) {
      double most = load.answers().mostCovered(space);
      gain -= takeOff(load, counts, in, gain, most);
      gain += fillUp(berth, counts, may, most);
    }
    return gain >= lost && !Arrays.equals(counts, berth.counts()) && make(berth, counts);
  }

  private List<Lot> mayComeIn(Berth berth) {
    boolean taller = random.nextInt(TALLER) == 0;
    List<Lot> may = new ArrayList<>();
    for (Lot lot : berth.load().lots()) {
      if (lots.left(berth.load().number(), lot.index()) > 0
          && (taller || lot.height() <= berth.stand().room())
          && berth.mayHold(lot, berth.counts())) {
        may.add(lot);
      }
    }
    return may;
  }

  /** Takes a few pieces off by chance; what they are worth. */
  private long takeOff(LoadAtHand load, int[] counts, Lot in, long gain, double most) {
    long off = 0;
    int tries = 1 + random.nextInt(MOST_OUT);
    boolean enough = false;
    for (int i = 0; i < tries && !enough; i++) {
      int lot = piece(counts, in.index());
      if (lot >= 0
          && !load.lots().get(lot).mustGo()
          && gain - off - load.lots().get(lot).worth() >= lost) {
        counts[lot]--;
        off += load.lots().get(lot).worth();
        enough = random.nextBoolean() && covered(load, counts) <= most;
      }
    }
    return off;
  }

  /** Puts in what else is left while there is room by area; what it is worth. */
  private long fillUp(Berth berth, int[] counts, List<Lot> may, double most) {
    LoadAtHand load = berth.load();
    long more = 0;
    for (int i = 0; i < MOST_MORE; i++) {
      Lot lot = may.get(random.nextInt(may.size()));
      int used = Math.max(0, counts[lot.index()] - berth.counts()[lot.index()]);
      if (lots.left(load.number(), lot.index()) > used && berth.mayHold(lot, counts)) {
        counts[lot.index()]++;
        boolean fits = covered(load, counts) <= most;
        counts[lot.index()] -= fits ? 0 : 1;
        more += fits ? lot.worth() : 0;
      }
    }
    return more;
  }

  private static double covered(LoadAtHand load, int[] counts) {
    return load.answers().covered(load.byKind(counts));
  }

  private boolean make(Berth berth, int[] counts) {
    LoadAtHand load = berth.load();
    Optional<LoadAtHand.State> changed = load.with(berth, counts);
    changed.ifPresent(state -> take(berth, counts, state));
    return changed.isPresent();
  }

  private void take(Berth berth, int[] counts, LoadAtHand.State state) {
    LoadAtHand load = berth.load();
    int[] more = counts.clone();
    for (int lot = 0; lot < more.length; lot++) {
      more[lot] -= berth.counts()[lot];
    }
    lots.take(load.number(), more);
    load.go(state);
  }

  /** A piece of one shelf and one of another take each other's places: it makes other holes. */
  private boolean exchange() {
    Berth one = any();
    Berth two = any();
    int a = piece(one.counts(), -1);
    int b = piece(two.counts(), -1);
    if (a < 0 || b < 0) {
      return false;
    }
    int aThere = lots.indexIn(two.load().number(), one.load().number(), a);
    int bHere = lots.indexIn(one.load().number(), two.load().number(), b);
    if (one.equals(two) || !fits(two, aThere) || !fits(one, bHere) || aThere == b) {
      return false;
    }
    int[] before = one.counts();
    LoadAtHand.State asItWas = one.load().now();
    if (!make(one, exchanged(before, a, bHere))) {
      return false;
    }
    if (!make(two, exchanged(two.counts(), b, aThere))) {
      take(one, before, asItWas);
      return false;
    }
    return true;
  }

  /** Whether a lot is on the list of a shelf's load, by its index there, and not too tall. */
  private static boolean fits(Berth berth, int lot) {
    return lot >= 0 && berth.load().lots().get(lot).height() <= berth.stand().room();
  }

  private static int[] exchanged(int[] counts, int out, int in) {
    int[] other = counts.clone();
    other[out]--;
    other[in]++;
    return other;
  }

  /** The lot of a piece drawn by chance that is not of a certain one; −1 where there is none. */
  private int piece(int[] counts, int not) {
    int all = 0;
    for (int lot = 0; lot < counts.length; lot++) {
      all += lot == not ? 0 : counts[lot];
    }
    int drawn = all == 0 ? 0 : random.nextInt(all);
    for (int lot = 0; lot < counts.length && all > 0; lot++) {
      drawn -= lot == not ? 0 : counts[lot];
      if (drawn < 0) {
        return lot;
      }
    }
    return -1;
  }
}
