/**
 * What ware is fired in and stood on: chambers, keep-outs, shelves, posts, and the columns they
 * make.
 *
 * <p>Chamber frame: origin at the centre of the chamber floor, x to the right, y away from the
 * person loading, z up. A shelf has its own frame, described with its outline.
 */
package shelfful.kiln;
