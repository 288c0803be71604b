package shelfful.schedule;

import shelfful.week.PlannedFiring;

/**
 * A firing whose time is held while what goes in may change.
 *
 * @param firing as it was
 * @param program of it
 * @param times of it
 */
record HeldTurn(PlannedFiring firing, KilnProgram program, Turnaround times) {}
