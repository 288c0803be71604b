package shelfful.packing;

import java.util.Objects;

/**
 * No setting was found.
 *
 * @param cause why; all causes but {@link Cause#NOT_FOUND} are proofs that there is none
 */
public record DoesNotFit(Cause cause) implements ShelfAnswer {
  /** Refuses a missing cause. */
  public DoesNotFit {
    Objects.requireNonNull(cause, "cause");
  }
}
