package shelfful.week;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/**
 * A way of firing a kiln, with the time it takes. Every duration is in whole minutes.
 *
 * @param id unique within a kiln
 * @param kind bisque or glaze
 * @param cone fired to
 * @param coneTolerance how many cones a piece's own cone may differ
 * @param atmosphere the air in the kiln
 * @param preheating before the program proper, candling included; may be nothing
 * @param up from switching on (or from the end of preheating) to the end of the last hold
 * @param down from then until it may be opened, as the kiln maker's manual says
 * @param loading hands-on, within one working day
 * @param unpacking hands-on, within one working day
 * @param duty share of the connected power that is drawn on average while heating, more than 0 and
 *     at most 1; empty for the common figure of its kind
 * @param measured energy of one such firing by the meter, in kilowatt hours, when it was read
 */
public record Program(
    String id,
    FiringKind kind,
    Cone cone,
    int coneTolerance,
    Atmosphere atmosphere,
    Duration preheating,
    Duration up,
    Duration down,
    Duration loading,
    Duration unpacking,
    OptionalDouble duty,
    OptionalDouble measured) {
  private static final Duration LONGEST = Duration.ofDays(10);

  /** Refuses times that no firing takes, and a duty or a reading out of range. */
  public Program {
    if (coneTolerance < 0) {
      throw new IllegalArgumentException("A cone tolerance must not be negative: " + coneTolerance);
    }
    require(id, "heating", up, Duration.ofMinutes(1));
    require(id, "loading", loading, Duration.ofMinutes(1));
    require(id, "unpacking", unpacking, Duration.ofMinutes(1));
    require(id, "preheating", preheating, Duration.ZERO);
    require(id, "cooling", down, Duration.ZERO);
    if (duty.isPresent() && !(duty.getAsDouble() > 0 && duty.getAsDouble() <= 1)) {
      throw new IllegalArgumentException(
          "The duty of program " + id + " must be more than 0 and at most 1, not " + duty);
    }
    if (measured.isPresent()
        && !(measured.getAsDouble() > 0 && measured.getAsDouble() <= 100_000)) {
      throw new IllegalArgumentException(
          "The meter reading of program " + id + " must be more than 0 kWh, not " + measured);
    }
  }

  private static void require(String id, String what, Duration time, Duration least) {
    boolean whole = time.equals(Duration.ofMinutes(time.toMinutes()));
    if (!whole || time.compareTo(least) < 0 || time.compareTo(LONGEST) > 0) {
      throw new IllegalArgumentException(
          "The " + what + " of program " + id + " must be whole minutes within ten days");
    }
  }

  /** The firing of this program in a kiln. */
  public Firing in(String kilnId) {
    return new Firing(kilnId, kind, cone, coneTolerance, atmosphere);
  }

  /** From the end of loading until it may be opened. */
  public Duration burning() {
    return preheating.plus(up).plus(down);
  }

  /** Whether ware wanting a cone and an atmosphere may go in. */
  public boolean takes(Optional<Cone> wanted, Optional<Atmosphere> air) {
    Firing firing = in("");
    return wanted.map(firing::takes).orElse(true) && firing.takes(air);
  }
}
