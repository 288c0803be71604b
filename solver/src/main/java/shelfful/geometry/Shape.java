package shelfful.geometry;

/**
 * A convex outline in its body's own frame (millimetres). Bodies that are not convex, such as a cup
 * with its handle, are made of several.
 */
public sealed interface Shape permits Disc, Capsule, Oval {
  /** The x of the outline's centre of symmetry. */
  double centreX();

  /** The y of the outline's centre of symmetry. */
  double centreY();

  /** The enclosed area in square millimetres. */
  double area();

  /** A length never greater than the outline's perimeter, exact for discs and capsules. */
  double perimeterAtLeast();

  /** The radius of the largest disc about the centre that lies inside the outline. */
  double innerRadius();

  /** The radius of the smallest disc about the centre that holds the outline. */
  double outerRadius();

  /** How far the outline reaches, at most, from its body's origin. */
  default double reach() {
    return Math.hypot(centreX(), centreY()) + outerRadius();
  }

  /** The area of the outline grown by a distance on all sides, never overstated (Steiner). */
  default double areaGrownBy(double distance) {
    return area() + perimeterAtLeast() * distance + Math.PI * distance * distance;
  }
}
