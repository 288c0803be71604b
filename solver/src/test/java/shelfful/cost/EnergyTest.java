package shelfful.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.week.Program;

/** kWh = kW × hours × duty, with the duties of common practice (no source). */
class EnergyTest {

  private static Program bisque(int preheating, int up, OptionalDouble measured) {
    return new Program(
        "b",
        FiringKind.BISQUE,
        new Cone("04"),
        0,
        Atmosphere.OXIDATION,
        Duration.ofHours(preheating),
        Duration.ofHours(up),
        Duration.ofHours(16),
        Duration.ofHours(2),
        Duration.ofHours(1),
        OptionalDouble.empty(),
        measured);
  }

  @Test
  void sevenHoursOfPreheatingAndNineOfBisqueAt11Point52KilowattsTake63Point9KilowattHours() {
    // By hand: 11.52 × (7 × 0.15 + 9 × 0.50) = 63.936.
    Energy energy =
        Energy.of(bisque(7, 9, OptionalDouble.empty()), OptionalDouble.of(11.52)).orElseThrow();

    assertThat(energy.kilowattHours()).isCloseTo(63.9, within(0.05));
    assertThat(energy.basis()).isEqualTo(Energy.Basis.ESTIMATE);
  }

  @Test
  void aGlazeFiringDrawsTwoThirdsAndABisqueHalf() {
    // By hand: 10 × 9 × 0.65 = 58.5 and 10 × 24 × 0.5 = 120.
    assertThat(Energy.of(Weeks.glaze(), OptionalDouble.of(10)).orElseThrow().kilowattHours())
        .isCloseTo(58.5, within(1e-9));
    assertThat(Energy.of(Weeks.bisque(), OptionalDouble.of(10)).orElseThrow().kilowattHours())
        .isCloseTo(120, within(1e-9));
  }

  @Test
  void theMeterIsBelievedBeforeAnyEstimate() {
    Optional<Energy> read =
        Energy.of(bisque(7, 9, OptionalDouble.of(70)), OptionalDouble.of(11.52));

    assertThat(read).contains(new Energy(70, Energy.Basis.METER));
    assertThat(Energy.of(bisque(7, 9, OptionalDouble.of(70)), OptionalDouble.empty()))
        .contains(new Energy(70, Energy.Basis.METER));
  }

  @Test
  void withoutPowerOrReadingThereIsNoFigure() {
    assertThat(Energy.of(Weeks.glaze(), OptionalDouble.empty())).isEmpty();
  }
}
