package shelfful.inspect;

/**
 * What something covers in the plan: a convex core and everything within a radius of it. A disc is
 * a point with a radius, a bar a line with one, ellipses and slabs have none. Micrometres, chamber
 * frame.
 */
sealed interface Footprint permits Disc, Bar, Ellipse, Slab {

  /** The point of the core farthest in a direction, which need not have length 1. */
  Vector farthest(Vector direction);

  /** How far the footprint reaches round its core. */
  double radius();

  Vector middle();

  /** No point of the footprint is farther from its middle than this. */
  double reach();
}
