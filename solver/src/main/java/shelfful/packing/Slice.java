package shelfful.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.geometry.Extent;
import shelfful.geometry.Shape;
import shelfful.geometry.Tolerance;

/**
 * A shelf's bodies cut by a plane at one height: what the proofs look at. Every kind that has a
 * part at this height shows its largest one there.
 *
 * <p>Written for soundness: each figure is on the safe side, so that a bound made from it never
 * refuses what fits.
 */
final class Slice {
  /** A kind that exists at the height, by its part there with the largest inscribed disc. */
  record Section(int kind, Shape shape) {
    double inner() {
      return shape.innerRadius();
    }
  }

  final ShelfSpace space;
  final List<BodyKind> kinds;
  final double height;

  /** Largest inscribed disc first. */
  final List<Section> sections;

  private final Extents extents;

  private Slice(ShelfSpace space, List<BodyKind> kinds, double height, Extents extents) {
    this.space = space;
    this.kinds = kinds;
    this.height = height;
    this.extents = extents;
    List<Section> found = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      int index = kind;
      largestAt(kinds.get(kind), height).ifPresent(shape -> found.add(new Section(index, shape)));
    }
    found.sort(Comparator.comparingDouble(Section::inner).reversed());
    this.sections = List.copyOf(found);
  }

  /** One slice just over each height at which some part begins. */
  static List<Slice> all(ShelfSpace space, List<BodyKind> kinds, Extents extents) {
    return kinds.stream()
        .flatMap(kind -> kind.parts().stream())
        .mapToDouble(Part::from)
        .distinct()
        .mapToObj(height -> new Slice(space, kinds, height, extents))
        .toList();
  }

  private static Optional<Shape> largestAt(BodyKind kind, double height) {
    return kind.parts().stream()
        .filter(part -> part.from() <= height && height < part.to())
        .map(Part::shape)
        .max(Comparator.comparingDouble(Shape::innerRadius).thenComparingDouble(Shape::area));
  }

  /**
   * How large at most is a convex set that holds every place for the centres of these sections: the
   * rooms, each moved inwards by the least that any of them asks for.
   */
  Extent places(List<Section> sought) {
    Extent least = null;
    for (Room room : space.rooms()) {
      double inset = Double.POSITIVE_INFINITY;
      for (Section section : sought) {
        inset = Math.min(inset, inset(room, section));
      }
      Extent here = extents.of(room.region(), inset);
      least = here.and(least);
    }
    return least;
  }

  /** How far inside a room the section's centre must stay, at least; negative for an overhang. */
  double inset(Room room, Section section) {
    BodyKind kind = kinds.get(section.kind());
    double deepest = Double.NEGATIVE_INFINITY;
    for (Shape held : held(room, kind)) {
      deepest = Math.max(deepest, held.innerRadius() - apart(held, section.shape()));
    }
    return deepest + room.clearance() + kind.tolerance();
  }

  /** How far inside a room the section grown by a distance must stay with all its points. */
  double insetGrown(Room room, Section section, double growth) {
    if (room.applies() == Applies.BODY) {
      return room.clearance() + kinds.get(section.kind()).tolerance() - growth;
    }
    return inset(room, section) - section.shape().outerRadius() - growth;
  }

  /** At most so much area is there for sections that keep an inset from a room. */
  double area(Room room, double inset, double clearanceTaken) {
    double area = extents.of(room.region(), inset).area();
    return area - ObstacleArea.within(this, room, inset, clearanceTaken);
  }

  /** Whether any part or foot that a room must hold is longer than the room. */
  boolean tooLong(Section section) {
    BodyKind kind = kinds.get(section.kind());
    for (Room room : space.rooms()) {
      double reach = extents.of(room.region(), 0).diameter();
      double edges = 2 * (room.clearance() + kind.tolerance());
      List<Shape> held = held(room, kind);
      for (Shape a : held) {
        boolean longer = held.stream().anyMatch(b -> exceeds(span(a, b) + edges, reach));
        if (longer) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean exceeds(double length, double limit) {
    return Tolerance.clearlyExceeds(length, limit);
  }

  /** A distance of two points, one in each shape, as large as can be said at once. */
  private static double span(Shape a, Shape b) {
    return a.equals(b) ? 2 * a.outerRadius() : apart(a, b) + a.innerRadius() + b.innerRadius();
  }

  private static List<Shape> held(Room room, BodyKind kind) {
    return room.applies() == Applies.FOOT
        ? List.of(kind.foot())
        : kind.parts().stream().map(Part::shape).toList();
  }

  private static double apart(Shape a, Shape b) {
    return Math.hypot(a.centreX() - b.centreX(), a.centreY() - b.centreY());
  }
}
