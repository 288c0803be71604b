package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Shape;
import shelfful.measure.Length;
import shelfful.packing.BodyKind;
import shelfful.packing.Part;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.StandingWare;

/**
 * Ware as {@code packing} sees it: convex parts by height, millimetres, the piece's axis as origin.
 */
final class WareTranslator {
  private WareTranslator() {}

  /**
   * The body of some ware.
   *
   * @param atAnyHeight whether distances count at whatever heights: every part then goes all the
   *     way up
   */
  static BodyKind body(String name, StandingWare ware, Length tolerance, boolean atAnyHeight) {
    List<Part> parts = new ArrayList<>();
    for (Band band : ware.bands()) {
      parts.add(
          new Part(shape(band.outline()), band.from().millimetres(), band.to().millimetres()));
    }
    for (Lug lug : ware.lugs()) {
      parts.add(new Part(bar(lug), lug.from().millimetres(), lug.to().millimetres()));
    }
    if (atAnyHeight) {
      double top = ware.height().millimetres();
      parts.replaceAll(part -> new Part(part.shape(), 0, top));
    }
    List<Part> needed = withoutHidden(parts);
    boolean mayTurn = needed.stream().anyMatch(part -> !isDiscOnAxis(part.shape()));
    return new BodyKind(name, needed, shape(ware.foot()), mayTurn, tolerance.millimetres());
  }

  static Shape shape(Outline outline) {
    if (outline instanceof Outline.Round round) {
      return new Disc(0, 0, round.diameter().millimetres() / 2);
    }
    double halfWidth = outline.width().millimetres() / 2;
    double halfDepth = outline.depth().millimetres() / 2;
    return new Oval(0, 0, halfWidth, halfDepth, 0);
  }

  private static Capsule bar(Lug lug) {
    double radius = lug.width().millimetres() / 2;
    double length = lug.reach().millimetres() - radius;
    double angle = lug.direction().radians();
    return new Capsule(0, 0, length * Math.cos(angle), length * Math.sin(angle), radius);
  }

  private static boolean isDiscOnAxis(Shape shape) {
    return shape instanceof Disc disc && disc.x() == 0 && disc.y() == 0;
  }

  /** Neighbouring bands of one outline become one part: fewer comparisons for the same shape. */
  private static List<Part> withoutHidden(List<Part> parts) {
    List<Part> merged = new ArrayList<>();
    for (Part part : parts) {
      Part last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && last.shape().equals(part.shape()) && last.to() == part.from()) {
        merged.set(merged.size() - 1, new Part(part.shape(), last.from(), part.to()));
      } else {
        merged.add(part);
      }
    }
    return merged;
  }
}
