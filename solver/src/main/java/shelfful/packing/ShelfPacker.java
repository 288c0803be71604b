package shelfful.packing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Answers whether bodies fit on a shelf, and how.
 *
 * <p>First what can be refused by proof is refused. Then the layout energy is minimised from
 * several starts, with hops in between. A {@link Packed} answer has passed an exact check of every
 * clearance. {@link Cause#NOT_FOUND} claims nothing: a setting may exist.
 *
 * <p>An answer is a pure function of question, effort, seed and neighbour, unless the caller's stop
 * signal ends the search early, which is answered with {@link Cause#NOT_FOUND}. Not safe for use by
 * several threads at once: give each its own.
 */
public final class ShelfPacker {
  private final BooleanSupplier stop;
  private final EarlyRefusal refusals = new EarlyRefusal(new Extents());
  private final KindPairs pairs = new KindPairs();
  private long minimisations;

  /** A packer that is never stopped. */
  public ShelfPacker() {
    this(() -> false);
  }

  /** A packer that asks between minimisations, each of a few milliseconds, whether to stop. */
  public ShelfPacker(BooleanSupplier stop) {
    this.stop = Objects.requireNonNull(stop, "stop");
  }

  /** Looks for a setting from scratch. */
  public ShelfAnswer pack(ShelfQuestion question, Effort effort, long seed) {
    return pack(question, effort, seed, List.of());
  }

  /**
   * Looks for a setting starting from a neighbouring one.
   *
   * @param near bodies of the question's kinds where they stood; any number of any kind: those
   *     asked for are kept, missing ones are set into the best holes, the rest are left out
   */
  public ShelfAnswer pack(ShelfQuestion question, Effort effort, long seed, List<Placed> near) {
    if (question.bodies() == 0) {
      return new Packed(List.of(), Double.POSITIVE_INFINITY);
    }
    Optional<Cause> refusal = refusals.of(question);
    if (refusal.isPresent()) {
      return new DoesNotFit(refusal.get());
    }
    ShelfSearch search = new ShelfSearch(new ShelfModel(question, pairs), seed, stop);
    Packed found = search.run(effort, near);
    minimisations += search.minimisations();
    return found != null ? found : new DoesNotFit(Cause.NOT_FOUND);
  }

  /** How many minimisations this packer has done in its life: a machine-free measure of work. */
  public long minimisations() {
    return minimisations;
  }
}
