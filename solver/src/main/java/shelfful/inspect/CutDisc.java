package shelfful.inspect;

import java.util.List;

/** Halves and quarters of a disc about the origin, less half a saw cut along each straight edge. */
final class CutDisc {
  private CutDisc() {}

  /**
   * The part with y of at least half the cut. Centroid of a circular segment: 2 s³ / 3 over its
   * area.
   */
  static ShelfShape half(long diameter, long sawCut) {
    double radius = diameter / 2.0;
    double cut = sawCut / 2.0;
    double chord = Math.sqrt(radius * radius - cut * cut);
    double area = radius * radius * Math.acos(cut / radius) - cut * chord;
    return new ShelfShape(
        List.of(new Wall(new Vector(0, -1), -cut)),
        List.of(new Vector(chord, cut), new Vector(-chord, cut)),
        diameter,
        new Vector(0, 2 * chord * chord * chord / 3 / area));
  }

  /**
   * The part with x and y of at least half the cut. Area and moment by integrating √(r² − x²) − c
   * from c to s = √(r² − c²). When the two cuts leave nothing, it is only the corner where they
   * meet.
   */
  static ShelfShape quarter(long diameter, long sawCut) {
    double radius = diameter / 2.0;
    double cut = sawCut / 2.0;
    double end = Math.sqrt(radius * radius - cut * cut);
    List<Wall> walls =
        List.of(new Wall(new Vector(-1, 0), -cut), new Wall(new Vector(0, -1), -cut));
    Vector inner = new Vector(cut, cut);
    if (end <= cut) {
      return new ShelfShape(walls, List.of(inner), diameter, inner);
    }
    double area =
        radius * radius / 2 * (Math.asin(end / radius) - Math.asin(cut / radius))
            - cut * (end - cut);
    double moment = (end * end * end - cut * cut * cut) / 3 - cut * (end * end - cut * cut) / 2;
    return new ShelfShape(
        walls,
        List.of(inner, new Vector(end, cut), new Vector(cut, end)),
        diameter,
        new Vector(moment / area, moment / area));
  }
}
