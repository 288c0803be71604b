package shelfful.ware;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * A repeatable shape.
 *
 * @param id unique within a studio
 * @param name as the potter says it
 * @param measuredAt the stage at which the sizes below were taken
 * @param shrinkage of the clay it is made of
 * @param profile its sizes at {@code measuredAt}
 * @param lid its lid, if it has one, measured at the same stage
 * @param mass of one piece without its lid
 * @param tolerance how far one piece may differ from the drawing; added to every clearance it is in
 * @param bareFoot how far above the foot the wax line runs
 */
public record Form(
    String id,
    String name,
    Stage measuredAt,
    Shrinkage shrinkage,
    Profile profile,
    Optional<Lid> lid,
    Mass mass,
    Length tolerance,
    Length bareFoot) {
  /** Refuses a negative tolerance or wax line. */
  public Form {
    if (tolerance.micrometres() < 0 || bareFoot.micrometres() < 0) {
      throw new IllegalArgumentException(
          "Tolerance and bare foot of the form " + id + " must not be negative");
    }
  }
}
