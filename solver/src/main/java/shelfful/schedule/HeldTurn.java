package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import shelfful.week.PlannedFiring;

/**
 * A firing whose time is held while what goes in may change.
 *
 * @param firing as it was
 * @param program of it
 * @param times of it
 */
record HeldTurn(PlannedFiring firing, KilnProgram program, Turnaround times) {

  /** The firing when nothing goes into it. */
  RealFiring leftEmpty() {
    return new RealFiring(program, times, List.of(), Optional.empty(), Optional.of(firing));
  }
}
