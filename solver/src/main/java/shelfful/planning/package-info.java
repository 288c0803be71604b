/**
 * Whole loads: which piece goes on which layer of which column, and what waits. The only package
 * that sees OptaPlanner, and the only one that translates ware, shelves and kilns into outlines for
 * {@code packing}.
 *
 * <p>The genuine decision is piece to layer, or left out. Layer heights, posts, shelves and
 * positions are derived from what stands on the layers: whether a set of outlines fits on a shelf
 * is asked once a run and remembered, so every derived figure is a pure function of the decision.
 *
 * <p>Lengths here are millimetres in doubles only where they enter {@code geometry}; heights stay
 * whole micrometres.
 */
package shelfful.planning;
