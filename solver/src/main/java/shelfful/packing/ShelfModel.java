package shelfful.packing;

import java.util.List;
import shelfful.geometry.Disc;
import shelfful.geometry.DiscBound;
import shelfful.geometry.Shape;
import shelfful.geometry.Tolerance;

/**
 * A {@link ShelfQuestion} laid out flat for inner loops. Bodies are numbered with those that need
 * no rotation first; kinds keep the question's numbers.
 */
final class ShelfModel {
  final ShelfQuestion question;
  final int kinds;
  final int bodies;
  final int roundBodies;
  final int[] kindOf;
  final boolean[] round;
  final double[] reach;
  final double[] tolerance;
  final DiscBound hull;
  final double aim;

  /** Required gap by kind * kinds + kind. */
  final double[] required;

  /** Required distance of two round bodies' axes, or -1 where they share no height. */
  final double[] axisDistance;

  /** Part pairs that share heights: a part of the first kind, then one of the second, and so on. */
  final int[][] partPairs;

  ShelfModel(ShelfQuestion question) {
    this(question, new KindPairs());
  }

  ShelfModel(ShelfQuestion question, KindPairs pairs) {
    this.question = question;
    this.kinds = question.kinds().size();
    this.bodies = question.bodies();
    this.kindOf = new int[bodies];
    this.round = new boolean[kinds];
    this.reach = new double[kinds];
    this.tolerance = new double[kinds];
    this.required = new double[kinds * kinds];
    this.axisDistance = new double[kinds * kinds];
    this.partPairs = new int[kinds * kinds][];
    for (int i = 0; i < kinds; i++) {
      BodyKind kind = question.kinds().get(i);
      round[i] = kind.isRound();
      reach[i] = kind.reach();
      tolerance[i] = kind.tolerance();
    }
    this.roundBodies = number();
    for (int i = 0; i < kinds; i++) {
      for (int j = 0; j < kinds; j++) {
        pair(i, j, pairs);
      }
    }
    this.hull = smallestHull(question.space().rooms());
    this.aim = Tolerance.AIM_BEYOND * hull.radius();
  }

  private int number() {
    int next = 0;
    int rounds = 0;
    for (boolean wanted : new boolean[] {true, false}) {
      for (int kind = 0; kind < kinds; kind++) {
        for (int i = 0; round[kind] == wanted && i < question.count(kind); i++) {
          kindOf[next++] = kind;
        }
      }
      rounds = wanted ? next : rounds;
    }
    return rounds;
  }

  private void pair(int i, int j, KindPairs pairs) {
    List<BodyKind> all = question.kinds();
    KindPairs.Parts parts = pairs.of(all.get(i), all.get(j));
    double gap = question.required(i, j);
    required[i * kinds + j] = gap;
    partPairs[i * kinds + j] = parts.nearest();
    axisDistance[i * kinds + j] = parts.none() ? -1 : parts.widest() + gap;
  }

  private static DiscBound smallestHull(List<Room> rooms) {
    DiscBound smallest = null;
    for (Room room : rooms) {
      DiscBound hull = room.region().boundingDisc();
      if (smallest == null || hull.radius() < smallest.radius()) {
        smallest = hull;
      }
    }
    return smallest;
  }

  /** The first body whose contours are looked at: among round bodies alone, axes say it all. */
  int contoursFrom() {
    boolean nothingInTheWay = question.space().obstacles().isEmpty() && question.fixed().isEmpty();
    boolean axesOnly = roundBodies == bodies && nothingInTheWay;
    return axesOnly ? bodies : 0;
  }

  /** The shapes of a kind that a room must hold. */
  List<Shape> heldBy(Room room, int kind) {
    BodyKind body = question.kinds().get(kind);
    return room.applies() == Applies.FOOT
        ? List.of(body.foot())
        : body.parts().stream().map(Part::shape).toList();
  }

  /** For a round kind: how far inside a room's bounds its axis must stay. */
  double axisInset(Room room, int kind) {
    double widest = 0;
    for (Shape shape : heldBy(room, kind)) {
      widest = Math.max(widest, ((Disc) shape).radius());
    }
    return widest + room.clearance() + tolerance[kind];
  }
}
