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
 * @param bisque how its pieces may be set with others in a bisque firing
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
    Length bareFoot,
    BisqueSetting bisque) {
  /**
   * Refuses a negative tolerance or wax line, a pile that grows by more than the form's height, and
   * a hollow deeper than the form or wider than it.
   */
  public Form {
    if (tolerance.micrometres() < 0 || bareFoot.micrometres() < 0) {
      throw new IllegalArgumentException(
          "Tolerance and bare foot of the form " + id + " must not be negative");
    }
    bisque.piled().ifPresent(piled -> requireNoHigherThan(profile, piled));
    bisque.hollow().ifPresent(hollow -> requireWithin(profile, hollow));
  }

  /** A form whose pieces stand alone in every firing. */
  public Form(
      String id,
      String name,
      Stage measuredAt,
      Shrinkage shrinkage,
      Profile profile,
      Optional<Lid> lid,
      Mass mass,
      Length tolerance,
      Length bareFoot) {
    this(
        id,
        name,
        measuredAt,
        shrinkage,
        profile,
        lid,
        mass,
        tolerance,
        bareFoot,
        BisqueSetting.ALONE);
  }

  private static void requireNoHigherThan(Profile profile, Piling piled) {
    if (piled.increment().isLongerThan(profile.height())) {
      throw new IllegalArgumentException(
          "A piece adds no more to a pile than its own height of "
              + profile.height()
              + ", not "
              + piled.increment());
    }
  }

  private static void requireWithin(Profile profile, Hollow hollow) {
    if (!profile.height().isLongerThan(hollow.deep())) {
      throw new IllegalArgumentException(
          "A hollow is less deep than its form is high ("
              + profile.height()
              + "), not "
              + hollow.deep());
    }
    boolean within =
        profile.bands().stream()
            .map(Band::outline)
            .anyMatch(
                outline ->
                    outline.width().isLongerThan(hollow.clear().width())
                        && outline.depth().isLongerThan(hollow.clear().depth()));
    if (!within) {
      throw new IllegalArgumentException("A hollow must be narrower than the form it is in");
    }
  }
}
