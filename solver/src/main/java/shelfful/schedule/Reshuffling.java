package shelfful.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import shelfful.ware.FiringKind;

/**
 * Finds room for the little that is left of a week in the glaze firings it already has: it is
 * tucked in, and where that leaves something one firing after the other is planned again with it,
 * which makes it less, or other. What is tall or may not stand everywhere is left most often: it
 * goes in where a load is built round it, and what makes way for it is tucked in easily. It ends
 * soon: another round may do with less.
 */
final class Reshuffling {
  /** More kilnfuls than this are hardly ever found room for. */
  private static final double LITTLE = 0.145;

  /** So little is worth going on for longer: through all firings so many times. */
  private static final double NEXT_TO_NOTHING = 0.05;

  /** After so many firings planned again one after the other for nothing it is given up. */
  private static final int IN_VAIN = 3;

  private static final int LONG_PASSES = 6;
  private static final int PASSES = 1;

  /** Each pass looks so many steps longer. */
  private static final int MORE_STEPS = 6;

  /**
   * So much more may be left than before if it is other ware: after the first pass, and where what
   * was left came before all else.
   */
  private static final double SLACK = 0.02;

  /**
   * What is left counts so many times its room at least when a firing is planned again: other ware
   * that makes way for it is tucked in more easily than what was left by all so far.
   */
  private static final double EAGER = 1.5;

  /** How long what is left is tucked in each time: some three seconds, mostly less. */
  private static final int TUCKING = 30_000;

  private static final double LEAST_GAIN = 1e-9;

  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final BooleanSupplier stop;
  private final Remainder remainder;
  private final Admission admission;
  private final TuckingIn tucking;
  private final Map<RealFiring, List<Chunk>> ware = new IdentityHashMap<>();

  Reshuffling(Ground ground, RoomBook room, LoadBook loads, BooleanSupplier stop) {
    this.ground = ground;
    this.room = room;
    this.loads = loads;
    this.stop = stop;
    this.remainder = new Remainder(ground, room);
    this.admission = new Admission(ground, room);
    this.tucking = new TuckingIn(ground, room, loads);
  }

  /** Takes note of what a firing holds; only such firings are planned again. */
  void holds(RealFiring firing, List<Chunk> chunks) {
    if (firing.program().program().kind() == FiringKind.GLAZE && firing.held().isEmpty()) {
      ware.put(firing, List.copyOf(chunks));
    }
  }

  /** Whether so little is left that room may be found for it, and all of it may go somewhere. */
  boolean isLittle(List<RealFiring> firings, List<Chunk> open) {
    double left = remainder.kilnfuls(open);
    return left > 0 && left < LITTLE && open.stream().allMatch(chunk -> mayGo(chunk, firings));
  }

  private boolean mayGo(Chunk chunk, List<RealFiring> firings) {
    return remainder.kilnfuls(List.of(chunk)) == 0
        || firings.stream()
            .anyMatch(firing -> ware.containsKey(firing) && admission.mayGoIn(chunk, firing));
  }

  /**
   * Empty unless room was found for all.
   *
   * @param firings of the week, made so far
   * @param open what is left
   * @param steps of a load in the first pass
   * @param seed of the order in which firings are planned again
   */
  Optional<Rollout.Rolled> settle(
      List<RealFiring> firings, List<Chunk> open, int steps, long seed) {
    Attempt attempt = new Attempt(firings, open, steps, new Random(seed));
    while (attempt.isWorthGoingOn()) {
      attempt.goOn();
    }
    return remainder.kilnfuls(attempt.left) == 0
        ? Optional.of(new Rollout.Rolled(attempt.made, attempt.left, true))
        : Optional.empty();
  }

  /** The firings as they are by now, and what is left. */
  private final class Attempt {
    private final int steps;
    private final Random random;
    private List<RealFiring> made;
    private List<Chunk> left;
    private List<Integer> order = List.of();
    private int tries;
    private int vain;

    Attempt(List<RealFiring> firings, List<Chunk> open, int steps, Random random) {
      this.steps = steps;
      this.random = random;
      made = new ArrayList<>(firings);
      left = tucked(made, open, random.nextLong());
    }

    boolean isWorthGoingOn() {
      int passes = remainder.kilnfuls(left) < NEXT_TO_NOTHING ? LONG_PASSES : PASSES;
      return vain < IN_VAIN && tries < passes * places(made).size() && isSomething(left);
    }

    /** Plans one firing again with what is left: every other time that comes before all else. */
    void goOn() {
      int turn = tries % places(made).size();
      if (turn == 0) {
        order = places(made);
        Collections.shuffle(order, random);
      }
      int pass = tries++ / order.size();
      int at = order.get(turn);
      boolean insists = vain % 2 == 0;
      double eagerness = insists ? Double.POSITIVE_INFINITY : EAGER + random.nextDouble();
      exchange(made.get(at), made)
          .make(left, eagerness, steps + pass * MORE_STEPS)
          .ifPresent(found -> consider(at, found, insists, pass));
    }

    private void consider(int at, Exchange.Made found, boolean insists, int pass) {
      List<RealFiring> others = new ArrayList<>(made);
      put(others, at, found.loaded());
      List<Chunk> then = tucked(others, found.open(), random.nextLong());
      double less = remainder.kilnfuls(left) - remainder.kilnfuls(then);
      boolean other = !remainder.shares(then).keySet().equals(remainder.shares(left).keySet());
      boolean welcome = less > (other && (insists || pass > 0) ? -SLACK : LEAST_GAIN);
      vain = less > 0 || insists && welcome ? 0 : vain + 1;
      if (welcome) {
        made = others;
        left = then;
      }
    }
  }

  private boolean isSomething(List<Chunk> left) {
    return remainder.kilnfuls(left) > 0 && !stop.getAsBoolean();
  }

  /** The firings that may be planned again, by their place. */
  private List<Integer> places(List<RealFiring> made) {
    List<Integer> places = new ArrayList<>();
    for (int at = 0; at < made.size(); at++) {
      if (ware.containsKey(made.get(at))) {
        places.add(at);
      }
    }
    return places;
  }

  private void put(List<RealFiring> made, int at, Exchange.Loaded loaded) {
    made.set(at, loaded.firing());
    ware.put(loaded.firing(), loaded.ware());
  }

  /** What is left after it was tucked in as far as it went; the firings are changed. */
  private List<Chunk> tucked(List<RealFiring> made, List<Chunk> left, long seed) {
    if (!isSomething(left)) {
      return left;
    }
    List<Integer> places = places(made);
    List<Exchange.Loaded> loaded =
        places.stream()
            .map(at -> new Exchange.Loaded(made.get(at), ware.get(made.get(at))))
            .toList();
    Optional<TuckingIn.Tucked> tucked =
        tucking
            .tuck(loaded, left, TUCKING, seed)
            .filter(found -> remainder.kilnfuls(found.open()) < remainder.kilnfuls(left));
    for (int i = 0; i < places.size() && tucked.isPresent(); i++) {
      put(made, places.get(i), tucked.get().loaded().get(i));
    }
    return tucked.map(TuckingIn.Tucked::open).orElse(left);
  }

  private Exchange exchange(RealFiring firing, List<RealFiring> made) {
    long lastDay =
        made.stream()
            .mapToLong(one -> ground.clock().day(one.times().unpacked()))
            .max()
            .orElseThrow();
    return new Exchange(
        ground, room, loads, new Exchange.Loaded(firing, ware.get(firing)), lastDay);
  }
}
