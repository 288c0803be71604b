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
 * @param isInside whether all of it stays inside the room
 */
record Section(
    int piece, Shape shape, double growth, double toWall, double toEdge, boolean isInside) {
  private static final double ROUNDING = 1e-9;

  /** A section in a room whose walls hold every piece wholly. */
  static Section of(int piece, Shape shape, double growth, double toWall, double toEdge) {
    boolean inside = toEdge + ROUNDING >= shape.outerRadius() + growth;
    return new Section(piece, shape, growth, toWall, toEdge, inside);
  }

  /** The same in a round room that holds the one it was in. */
  Section inRound(double depth) {
    return new Section(piece, shape, growth, depth, depth, isInside);
  }

  /** Radius of the grown disc inside it. */
  double inner() {
    return shape.innerRadius() + growth;
  }

  /** Radius of the grown disc round it. */
  double outer() {
    return shape.outerRadius() + growth;
  }
}
