package shelfful.inspect;

import shelfful.kiln.Column;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Layer;

/**
 * A shelf where it lies. Heights in micrometres over the chamber floor.
 *
 * @param layer as the load says
 * @param column it belongs to
 * @param shelf its kind
 * @param footprint what it covers
 * @param room where something has to be to be over it
 * @param centroid of its area
 */
record LaidShelf(
    Layer layer, Column column, Shelf shelf, Footprint footprint, Room room, Vector centroid) {

  static LaidShelf of(Layer layer, Column column, Shelf shelf) {
    ShelfPlace place = column.places().get(layer.place());
    ShelfShape shape = ShelfShape.of(shelf.outline());
    return new LaidShelf(
        layer,
        column,
        shelf,
        shape.footprint(place.at(), place.turn()),
        shape.room(place.at(), place.turn()),
        shape.centroid(place.at(), place.turn()));
  }

  String id() {
    return layer.id();
  }

  long top() {
    return layer.z().micrometres();
  }

  long underside() {
    return top() - shelf.thickness().micrometres();
  }

  HeightRange heights() {
    return new HeightRange(underside(), top());
  }

  /**
   * Whether it lies on or over the other, with part of it over part of the other; touching edges do
   * not count.
   */
  boolean isOver(LaidShelf other) {
    return underside() >= other.top() && overlaps(other);
  }

  boolean overlaps(LaidShelf other) {
    return !Gap.isAtLeast(footprint, other.footprint, 0);
  }
}
