package shelfful.packing;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Spreads bodies that fit, so that the smallest spare gap is as large as it can be made: a hand
 * cannot place to a tenth of a millimetre.
 *
 * <p>Widens every clearance by one and the same amount and relaxes, doubling the amount until that
 * fails and then halving the difference. The best valid setting met is the answer, so its spare is
 * never less than that of the start. A local search: no claim that the spare is the largest
 * possible. Deterministic like {@link ShelfPacker}; not for use by several threads at once.
 */
public final class EvenSpacer {
  private static final int MOST_DOUBLINGS = 30;
  private static final int HALVINGS = 14;
  private static final double FIRST_SHARE = 0.02;

  private final BooleanSupplier stop;
  private final double precision;

  /** A spacer that is never stopped. */
  public EvenSpacer() {
    this(() -> false);
  }

  /** A spacer that asks between minimisations whether to stop and keep its best. */
  public EvenSpacer(BooleanSupplier stop) {
    this(stop, 0);
  }

  /**
   * A spacer that is satisfied sooner.
   *
   * @param precision in millimetres: it ends when it knows that it cannot add more to the spare; 0
   *     to go on as long as it does
   */
  public EvenSpacer(BooleanSupplier stop, double precision) {
    this.stop = Objects.requireNonNull(stop, "stop");
    this.precision = precision;
  }

  /**
   * The same bodies, spread.
   *
   * @param start a valid setting of exactly the bodies asked for
   * @param effort hops are tries to leave a dead end at each amount
   */
  public Packed spread(ShelfQuestion question, Packed start, Effort effort, long seed) {
    checkCounts(question, start.bodies());
    double spare = Spare.of(question, start.bodies());
    Packed best = new Packed(start.bodies(), Math.max(0, Math.min(spare, start.spare())));
    if (start.bodies().isEmpty() || Double.isInfinite(spare)) {
      return start;
    }
    ShelfModel model = new ShelfModel(question);
    Widening widening = new Widening(new LayoutEnergy(model), effort, new SplittableRandom(seed));
    double low = best.spare();
    double step = FIRST_SHARE * model.hull.radius();
    double high = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_DOUBLINGS && !stop.getAsBoolean(); i++) {
      Packed wider = widening.to(low + step, best);
      if (wider == null) {
        high = low + step;
        break;
      }
      best = wider;
      low = Math.max(low + step, wider.spare());
      step *= 2;
    }
    return halve(widening, best, high);
  }

  private Packed halve(Widening widening, Packed start, double limit) {
    Packed best = start;
    double high = limit;
    for (int i = 0; i < HALVINGS && high - best.spare() > precision && !stop.getAsBoolean(); i++) {
      double middle = (best.spare() + high) / 2;
      Packed wider = widening.to(middle, best);
      if (wider == null) {
        high = middle;
      } else {
        best = wider;
      }
    }
    return best;
  }

  private static void checkCounts(ShelfQuestion question, List<Placed> bodies) {
    int[] counts = new int[question.kinds().size()];
    bodies.forEach(body -> counts[body.kind()]++);
    if (!Arrays.equals(counts, question.counts())) {
      throw new IllegalArgumentException(
          "the setting holds "
              + Arrays.toString(counts)
              + " bodies by kind, but the question asks for "
              + Arrays.toString(question.counts()));
    }
  }
}
