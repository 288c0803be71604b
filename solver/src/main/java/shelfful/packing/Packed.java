package shelfful.packing;

import java.util.List;

/**
 * A valid setting of all bodies asked for.
 *
 * @param bodies in order of kind
 * @param spare the least of gap minus required clearance over every pair, obstacle and room, at
 *     least 0, mm; infinite when nothing can come close to anything
 */
public record Packed(List<Placed> bodies, double spare) implements ShelfAnswer {
  /** Copies the list; refuses a negative spare, which would not be a valid setting. */
  public Packed {
    bodies = List.copyOf(bodies);
    if (!(spare >= 0)) {
      throw new IllegalArgumentException("spare must be at least 0 mm but is " + spare);
    }
  }
}
