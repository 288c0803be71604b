package shelfful.ware;

import java.util.Optional;
import shelfful.measure.Mass;

/**
 * How pieces of a form may be set with others in a bisque firing. Potters differ in what they
 * trust, so all of it is the studio's to say; nothing said means that every piece stands alone.
 *
 * @param piled upright on or in each other, so many high
 * @param rimToRim in pairs, the upper one upside down on the rim of the lower
 * @param footToFoot in pairs, the lower one upside down, the upper on its foot
 * @param hollow small forms set inside
 * @param carries how much one piece may carry, all that rests on or in it together; empty where the
 *     other limits are enough
 */
public record BisqueSetting(
    Optional<Piling> piled,
    boolean rimToRim,
    boolean footToFoot,
    Optional<Hollow> hollow,
    Optional<Mass> carries) {
  /** Every piece stands alone. */
  public static final BisqueSetting ALONE =
      new BisqueSetting(Optional.empty(), false, false, Optional.empty(), Optional.empty());

  /** Refuses a limit for what a piece carries where it may carry nothing. */
  public BisqueSetting {
    boolean alone = piled.isEmpty() && !rimToRim && !footToFoot && hollow.isEmpty();
    if (alone && carries.isPresent()) {
      throw new IllegalArgumentException(
          "How much a piece carries belongs to a form that something may be set on or in");
    }
  }

  /** Whether nothing may be set on or in a piece of the form. */
  public boolean isAlone() {
    return equals(ALONE);
  }
}
