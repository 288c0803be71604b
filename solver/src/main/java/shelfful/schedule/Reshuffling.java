package shelfful.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import shelfful.ware.FiringKind;

/**
 * Finds room for the little that is left of a week in the glaze firings it already has: one after
 * the other is planned again with what is left, which becomes less, or other, until nothing is.
 */
final class Reshuffling {
  /** More kilnfuls than this are not found room for. */
  private static final double LITTLE = 0.25;

  /** So little is worth going on for. */
  private static final double NEXT_TO_NOTHING = 0.05;

  private static final int PASSES = 3;
  private static final int LONG_PASSES = 9;

  /** Each pass looks so many steps longer. */
  private static final int MORE_STEPS = 6;

  /** After the first pass so much more may be left than before, if only it is other ware. */
  private static final double SLACK = 0.02;

  private static final double LEAST_GAIN = 1e-9;

  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final BooleanSupplier stop;
  private final Remainder remainder;
  private final Map<RealFiring, List<Chunk>> ware = new IdentityHashMap<>();

  Reshuffling(Ground ground, RoomBook room, LoadBook loads, BooleanSupplier stop) {
    this.ground = ground;
    this.room = room;
    this.loads = loads;
    this.stop = stop;
    this.remainder = new Remainder(ground, room);
  }

  /** Takes note of what a firing holds; only such firings are planned again. */
  void holds(RealFiring firing, List<Chunk> chunks) {
    if (firing.program().program().kind() == FiringKind.GLAZE && firing.held().isEmpty()) {
      ware.put(firing, List.copyOf(chunks));
    }
  }

  /** Whether so little is left that room may be found for it. */
  boolean isLittle(List<Chunk> open) {
    double left = remainder.kilnfuls(open);
    return left > 0 && left < LITTLE;
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
    Random random = new Random(seed);
    List<RealFiring> made = new ArrayList<>(firings);
    List<Chunk> left = open;
    int pass = 0;
    while (remainder.kilnfuls(left) > 0 && pass < passes(left) && !stop.getAsBoolean()) {
      List<RealFiring> order = new ArrayList<>(made.stream().filter(ware::containsKey).toList());
      Collections.shuffle(order, random);
      for (RealFiring firing : order) {
        double eagerness = pass == 0 ? 1 : 1 + random.nextDouble();
        Optional<Exchange.Made> found =
            remainder.kilnfuls(left) == 0 || stop.getAsBoolean()
                ? Optional.empty()
                : exchange(firing, made).make(left, eagerness, steps + pass * MORE_STEPS);
        if (found.filter(isWelcome(left, pass == 0 ? -LEAST_GAIN : SLACK)).isPresent()) {
          RealFiring again = found.get().loaded().firing();
          made.set(made.indexOf(firing), again);
          ware.put(again, found.get().loaded().ware());
          left = found.get().open();
        }
      }
      pass++;
    }
    return remainder.kilnfuls(left) == 0
        ? Optional.of(new Rollout.Rolled(made, left, true))
        : Optional.empty();
  }

  private int passes(List<Chunk> left) {
    return remainder.kilnfuls(left) < NEXT_TO_NOTHING ? LONG_PASSES : PASSES;
  }

  private Predicate<Exchange.Made> isWelcome(List<Chunk> left, double slack) {
    return found -> remainder.kilnfuls(found.open()) < remainder.kilnfuls(left) + slack;
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
