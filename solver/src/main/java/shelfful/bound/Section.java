package shelfful.bound;

import shelfful.geometry.Shape;

/**
 * A piece cut at a height, in one room.
 *
 * @param piece its index
 * @param shape of its largest outline about its axis there
 * @param growth of the outline, mm
 * @param toWall the least distance of its axis from the walls of the room, mm
 * @param toEdge the least distance of its axis from the shelf edges of the room, mm
 */
record Section(int piece, Shape shape, double growth, double toWall, double toEdge) {
  /** Radius of the grown disc inside it. */
  double inner() {
    return shape.innerRadius() + growth;
  }

  /** Radius of the grown disc round it. */
  double outer() {
    return shape.outerRadius() + growth;
  }
}
