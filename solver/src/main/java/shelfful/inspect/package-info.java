/**
 * The independent judge: re-derives every clearance, height, support, stock and rule of a finished
 * load from the load and what was asked, with geometry of its own. It knows nothing of how a load
 * was made.
 */
package shelfful.inspect;
