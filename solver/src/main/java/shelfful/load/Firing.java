package shelfful.load;

import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/**
 * One run of a kiln.
 *
 * @param kilnId the kiln
 * @param kind bisque or glaze
 * @param cone fired to
 * @param coneTolerance how many cones a piece's own cone may differ, not negative
 * @param atmosphere the air in the kiln
 */
public record Firing(
    String kilnId, FiringKind kind, Cone cone, int coneTolerance, Atmosphere atmosphere) {
  /** Refuses a negative tolerance. */
  public Firing {
    if (coneTolerance < 0) {
      throw new IllegalArgumentException("A cone tolerance must not be negative: " + coneTolerance);
    }
  }

  /** Whether a piece that is to be fired to a cone may go in. */
  public boolean takes(Cone wanted) {
    return cone.stepsFrom(wanted) <= coneTolerance;
  }

  /** Whether a glaze that needs an atmosphere may go in. */
  public boolean takes(Optional<Atmosphere> wanted) {
    return wanted.isEmpty() || wanted.get() == atmosphere;
  }
}
