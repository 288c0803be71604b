package shelfful.schedule;

/**
 * Units of one kind that are asked to go in.
 *
 * @param kind of unit
 * @param must how many were given this firing
 * @param may how many more are ready and may fill what room is left
 */
record Asked(UnitKind kind, int must, int may) {}
