package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import shelfful.load.Load;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekRequest;

/**
 * A firing whose load was really planned and judged.
 *
 * @param program how
 * @param times when
 * @param going units, in the order of the load's pieces
 * @param load how they stand; empty for a held firing that nothing goes into
 * @param held the firing as it was asked to be held, if it was
 */
record RealFiring(
    KilnProgram program,
    Turnaround times,
    List<Going> going,
    Optional<Load> load,
    Optional<PlannedFiring> held) {
  RealFiring {
    going = List.copyOf(going);
  }

  /** The same firing with another load. */
  RealFiring again(WeekRequest request, LoadAnswer answer, List<Going> others) {
    Load named = new LoadNaming(request, program, others).named(answer, times);
    return new RealFiring(program, times, others, Optional.of(named), held);
  }

  /**
   * Units of one lot.
   *
   * @param lot they are of
   * @param numbers rising
   */
  record Going(Lot lot, List<Integer> numbers) {
    Going {
      numbers = List.copyOf(numbers);
    }
  }
}
