package shelfful.packing;

import java.util.List;
import java.util.Objects;
import shelfful.geometry.Disc;
import shelfful.geometry.Shape;

/**
 * A kind of body: all bodies of a kind are interchangeable.
 *
 * @param name for messages
 * @param parts what needs room, band by band; at least one
 * @param foot what stands on the shelf; only rooms for feet look at it
 * @param mayTurn whether it may be set at any rotation, or only as drawn
 * @param tolerance added to every clearance of this body, at least 0, mm
 */
public record BodyKind(
    String name, List<Part> parts, Shape foot, boolean mayTurn, double tolerance) {
  /** Copies the parts; refuses a body without any, and a negative tolerance. */
  public BodyKind {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(foot, "foot");
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("body kind '" + name + "' has no parts");
    }
    if (!(tolerance >= 0) || Double.isInfinite(tolerance)) {
      throw new IllegalArgumentException(
          "tolerance of body kind '" + name + "' must be at least 0 mm but is " + tolerance);
    }
  }

  /** A plain cylinder that stands on its whole face. */
  public static BodyKind round(String name, double radius, double height) {
    Disc disc = Disc.of(radius);
    return new BodyKind(name, List.of(new Part(disc, 0, height)), disc, false, 0);
  }

  /** One convex outline from the shelf to a height, which may be set at any rotation. */
  public static BodyKind upright(String name, Shape outline, double height) {
    return new BodyKind(name, List.of(new Part(outline, 0, height)), outline, true, 0);
  }

  /** Whether turning it changes nothing: foot and parts are discs about the body's axis. */
  public boolean isRound() {
    boolean round = isAxial(foot);
    for (Part part : parts) {
      round &= isAxial(part.shape());
    }
    return round;
  }

  /** How far any part reaches, at most, from the body's origin, mm. */
  double reach() {
    double reach = 0;
    for (Part part : parts) {
      reach = Math.max(reach, part.shape().reach());
    }
    return reach;
  }

  private static boolean isAxial(Shape shape) {
    return shape instanceof Disc disc && disc.x() == 0 && disc.y() == 0;
  }
}
