package shelfful.bound;

/**
 * A proven limit of what stands on one level of a column: the sum of shares is at most the room.
 *
 * @param cause the theorem or rule behind it
 * @param shares what one piece of each offer takes, at least 0
 * @param room what there is
 */
record Limit(LimitCause cause, double[] shares, double room) {}
