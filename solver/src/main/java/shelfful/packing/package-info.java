/**
 * One shelf: do these bodies fit on it, and how?
 *
 * <p>Knows bodies, rooms and clearances as plane geometry and nothing of pottery; imports only
 * {@link shelfful.geometry}. Units are millimetres and radians, all plain doubles, in the shelf's
 * own frame, with heights measured up from the shelf.
 *
 * <p>The doors are {@link shelfful.packing.ShelfPacker} (fit or not, and how), {@link
 * shelfful.packing.EvenSpacer} (the same bodies, spread) and {@link shelfful.packing.PackingBound}
 * (what no setting can exceed). Answers are pure functions of question, effort, seed and the
 * neighbouring layout handed in; effort is a count of tries, never a time.
 */
package shelfful.packing;
