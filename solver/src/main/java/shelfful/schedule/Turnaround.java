package shelfful.schedule;

/**
 * When one firing begins and ends, in minutes.
 *
 * @param loads loading begins
 * @param unpacks unpacking begins
 * @param unpacked the kiln is empty again
 */
record Turnaround(long loads, long unpacks, long unpacked) {}
