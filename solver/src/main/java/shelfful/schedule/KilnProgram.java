package shelfful.schedule;

import shelfful.week.Program;

/**
 * One program of one kiln.
 *
 * @param index among all programs of all kilns
 * @param kiln index of the kiln
 * @param kilnId the kiln
 * @param program how it is fired
 */
record KilnProgram(int index, int kiln, String kilnId, Program program) {

  long loading() {
    return program.loading().toMinutes();
  }

  long burning() {
    return program.burning().toMinutes();
  }

  long unpacking() {
    return program.unpacking().toMinutes();
  }
}
