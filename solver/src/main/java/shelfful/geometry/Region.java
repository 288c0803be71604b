package shelfful.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex container: the intersection of its bounds. May turn out empty; must be bounded.
 *
 * @param bounds at least one
 */
public record Region(List<Bound> bounds) {
  /** Refuses a region without bounds, or one that reaches to infinity. */
  public Region {
    bounds = List.copyOf(bounds);
    boolean closed = bounds.stream().anyMatch(bound -> !(bound instanceof HalfPlane));
    if (!closed && OuterPolygon.of(bounds, 0).isUnbounded()) {
      throw new IllegalArgumentException(
          "the region's " + bounds.size() + " bound(s) leave it open; close it with more walls");
    }
  }

  /** A disc about the frame's origin. */
  public static Region disc(double radius) {
    return disc(0, 0, radius);
  }

  /** A disc about a point. */
  public static Region disc(double x, double y, double radius) {
    return new Region(List.of(new DiscBound(x, y, radius)));
  }

  /** An oval about the frame's origin, its length along x. */
  public static Region oval(double halfLength, double halfWidth) {
    return new Region(List.of(new OvalBound(0, 0, halfLength, halfWidth, 0)));
  }

  /** A rectangle about the frame's origin, sides along the axes. */
  public static Region rectangle(double width, double depth) {
    return rectangle(-width / 2, -depth / 2, width / 2, depth / 2);
  }

  /** A rectangle between two corners, sides along the axes. */
  public static Region rectangle(double minX, double minY, double maxX, double maxY) {
    Finite.positive("rectangle width", maxX - minX);
    Finite.positive("rectangle depth", maxY - minY);
    return new Region(
        List.of(
            new HalfPlane(1, 0, maxX),
            new HalfPlane(0, 1, maxY),
            new HalfPlane(-1, 0, -minX),
            new HalfPlane(0, -1, -minY)));
  }

  /**
   * A regular polygon about the frame's origin.
   *
   * @param sides at least 3
   * @param inradius from the centre to the middle of a side (half the width across flats), mm
   * @param facing direction of the first side's outward normal, radians
   */
  public static Region regularPolygon(int sides, double inradius, double facing) {
    if (sides < 3) {
      throw new IllegalArgumentException("a polygon has at least 3 sides, not " + sides);
    }
    Finite.positive("polygon inradius", inradius);
    List<Bound> walls = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      walls.add(HalfPlane.facing(facing + 2 * Math.PI * i / sides, inradius));
    }
    return new Region(walls);
  }

  /**
   * The part of a disc about the frame's origin that lies beyond a straight cut.
   *
   * @param radius of the whole disc, mm
   * @param facing direction from the cut into the kept part, radians
   * @param cut distance of the cut from the origin in that direction, mm (half a saw cut; 0 for an
   *     exact half)
   */
  public static Region halfDisc(double radius, double facing, double cut) {
    return disc(radius).beyond(facing, cut);
  }

  /** The points whose distance along a direction from the frame's origin is at least a cut. */
  private static HalfPlane halfPlane(double facing, double cut) {
    return new HalfPlane(-Math.cos(facing), -Math.sin(facing), -cut);
  }

  /** This region cut by a straight line, keeping what lies beyond it in a direction (radians). */
  public Region beyond(double facing, double cut) {
    List<Bound> walls = new ArrayList<>(bounds);
    walls.add(halfPlane(facing, cut));
    return new Region(walls);
  }

  /** The intersection of both regions; a bound named twice is kept once. */
  public Region and(Region other) {
    List<Bound> walls = new ArrayList<>(bounds);
    for (Bound bound : other.bounds) {
      if (!walls.contains(bound)) {
        walls.add(bound);
      }
    }
    return new Region(walls);
  }

  /** The area in mm²: exact for a single disc, oval, or polygon, else over by at most 0.04 %. */
  public double area() {
    return extent(0).area();
  }

  /**
   * How large at most is the set of points at least {@code inset} inside every bound; for a
   * negative inset, of the region grown by so much. Inner parallels of half-planes and discs are
   * exact; that of an oval lies within the oval of half axes a - t, b - t, because the outer
   * parallel of an oval holds the oval grown in both half axes.
   */
  public Extent extent(double inset) {
    if (inset < 0) {
      return extent(0).grownBy(-inset);
    }
    Extent least = null;
    for (Bound bound : bounds) {
      if (bound instanceof DiscBound disc) {
        least = Extent.ofDisc(disc.radius() - inset).and(least);
      } else if (bound instanceof OvalBound oval) {
        least = ofOval(oval, inset).and(least);
      }
    }
    boolean alone = bounds.size() == 1 && least != null;
    return alone ? least : OuterPolygon.of(bounds, inset).extent().and(least);
  }

  /** Perimeter by pi sqrt(2 (a² + b²)), an upper bound (Cauchy and Schwarz). */
  private static Extent ofOval(OvalBound oval, double inset) {
    double a = oval.halfLength() - inset;
    double b = oval.halfWidth() - inset;
    if (a < 0 || b < 0) {
      return Extent.NONE;
    }
    return new Extent(
        Math.PI * a * b, Math.PI * Math.sqrt(2 * (a * a + b * b)), 2 * Math.max(a, b), false);
  }

  /** A disc's worth of room round the region: its centre is the middle of the region's box. */
  public DiscBound boundingDisc() {
    if (bounds.size() == 1 && bounds.get(0) instanceof DiscBound disc) {
      return disc;
    }
    OuterPolygon polygon = OuterPolygon.of(bounds, 0);
    double[] centre = polygon.centre();
    double radius = polygon.farthestFrom(centre[0], centre[1]);
    return radius > 0
        ? new DiscBound(centre[0], centre[1], radius)
        : new DiscBound(0, 0, Tolerance.NO_LENGTH);
  }

  /** The radius of {@link #boundingDisc()}, mm. */
  public double boundingRadius() {
    return boundingDisc().radius();
  }
}
