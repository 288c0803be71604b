package shelfful.inspect;

/**
 * A straight edge: everything inside has {@code outwards · point <= offset}.
 *
 * @param outwards unit vector away from the inside
 * @param offset of the edge along it, micrometres
 */
record Wall(Vector outwards, double offset) {

  /**
   * How far the whole footprint lies inside of the edge; exact for discs when the edge lies along
   * an axis.
   */
  Reading depth(Footprint body) {
    double farthest = outwards.dot(body.farthest(outwards)) + body.radius();
    boolean alongAxis = outwards.x() == 0 || outwards.y() == 0;
    return new Reading(offset - farthest, alongAxis && body instanceof Disc);
  }

  boolean holds(Vector point) {
    return outwards.dot(point) <= offset;
  }

  /** The edge after its frame was turned by a unit vector and moved. */
  Wall laid(Vector turn, Vector at) {
    Vector turned = outwards.turnedWith(turn);
    return new Wall(turned, offset + turned.dot(at));
  }
}
