package shelfful.schedule;

/**
 * Units of one kind that are asked to go in.
 *
 * @param kind of unit
 * @param must how many have to
 * @param meant how many more were given this firing, but may go later as well
 * @param may how many more are ready and may fill what room is left
 * @param weight what a piece of those that need not counts against others, from 1; one that is
 *     meant counts twice that
 */
record Asked(UnitKind kind, int must, int meant, int may, int weight) {
  int units() {
    return must + meant + may;
  }
}
