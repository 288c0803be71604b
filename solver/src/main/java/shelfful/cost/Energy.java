package shelfful.cost;

import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.ware.FiringKind;
import shelfful.week.Program;

/**
 * The energy of one firing.
 *
 * @param kilowattHours more than 0
 * @param basis where the figure comes from
 */
public record Energy(double kilowattHours, Basis basis) {
  /** Share of the connected power a bisque firing draws on average; common practice, no source. */
  public static final double BISQUE_DUTY = 0.50;

  /** The same for a glaze firing to cone 6; common practice, no source. */
  public static final double GLAZE_DUTY = 0.65;

  /** The same while preheating; common practice, no source. */
  public static final double PREHEATING_DUTY = 0.15;

  private static final double MINUTES = 60;

  /** Where a figure comes from. */
  public enum Basis {
    /** The meter was read at such a firing. */
    METER,
    /** Reckoned from connected power, hours and duty. */
    ESTIMATE
  }

  /**
   * Of a program in a kiln: by the meter where it was read, else kW × hours × duty. Empty when
   * neither a reading nor the power is known. The duty of a glaze firing is that for cone 6 unless
   * the program has its own.
   *
   * @param kilowatts the kiln's connected power
   */
  public static Optional<Energy> of(Program program, OptionalDouble kilowatts) {
    if (program.measured().isPresent()) {
      return Optional.of(new Energy(program.measured().getAsDouble(), Basis.METER));
    }
    if (kilowatts.isEmpty()) {
      return Optional.empty();
    }
    double usual = program.kind() == FiringKind.BISQUE ? BISQUE_DUTY : GLAZE_DUTY;
    double preheating = program.preheating().toMinutes() / MINUTES * PREHEATING_DUTY;
    double heating = program.up().toMinutes() / MINUTES * program.duty().orElse(usual);
    return Optional.of(
        new Energy(kilowatts.getAsDouble() * (preheating + heating), Basis.ESTIMATE));
  }
}
