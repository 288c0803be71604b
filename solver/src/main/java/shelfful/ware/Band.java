package shelfful.ware;

import shelfful.measure.Length;

/**
 * The outline of a body between two heights over its foot. Within a band the outline given is the
 * widest.
 *
 * @param from lower height, not negative
 * @param to upper height, more than {@code from}
 */
public record Band(Outline outline, Length from, Length to) {
  /** Refuses heights that are negative or not in order. */
  public Band {
    if (from.micrometres() < 0 || !to.isLongerThan(from)) {
      throw new IllegalArgumentException(
          "A band must go up from a height of at least 0, not from " + from + " to " + to);
    }
  }

  Band scaledUp(double factor) {
    return new Band(outline.scaledUp(factor), from.scaledUp(factor), to.scaledUp(factor));
  }

  Band raised(Length by) {
    return new Band(outline, from.plus(by), to.plus(by));
  }
}
