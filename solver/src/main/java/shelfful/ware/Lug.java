package shelfful.ware;

import shelfful.measure.Angle;
import shelfful.measure.Length;

/**
 * Whatever sticks out of a body: a handle, a spout, a knob at the side. Seen from above it is a
 * straight bar with a round end, running from the piece's axis outwards.
 *
 * @param name what it is, for instance {@code handle}
 * @param direction in which it sticks out, in the form's frame
 * @param reach from the piece's axis to the tip
 * @param width across, positive and not more than twice the reach
 * @param from lower height over the foot
 * @param to upper height over the foot
 */
public record Lug(
    String name, Angle direction, Length reach, Length width, Length from, Length to) {
  /**
   * Refuses sizes that are not positive, a lug wider than twice its reach, and heights out of
   * order.
   */
  public Lug {
    if (!width.isPositive() || width.micrometres() > 2 * reach.micrometres()) {
      throw new IllegalArgumentException(
          "A lug must be wider than 0 and no wider than twice its reach: " + width + ", " + reach);
    }
    if (from.micrometres() < 0 || !to.isLongerThan(from)) {
      throw new IllegalArgumentException(
          "A lug must go up from a height of at least 0, not from " + from + " to " + to);
    }
  }

  Lug scaledUp(double factor) {
    return new Lug(
        name,
        direction,
        reach.scaledUp(factor),
        width.scaledUp(factor),
        from.scaledUp(factor),
        to.scaledUp(factor));
  }

  Lug raised(Length by) {
    return new Lug(name, direction, reach, width, from.plus(by), to.plus(by));
  }

  /** On a piece of some height that is turned over about its x axis. */
  Lug turnedOver(Length height) {
    Angle mirrored = new Angle(-direction.millidegrees());
    return new Lug(name, mirrored, reach, width, height.minus(to), height.minus(from));
  }
}
