package shelfful.schedule;

/**
 * Where ware was to go before: the so-many-th turn of a kiln.
 *
 * @param track index of the kiln, or of a held firing after the kilns
 * @param order 0 for the next turn
 */
record Hint(int track, int order) {}
