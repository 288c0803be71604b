package shelfful.packing;

import java.util.List;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;

/**
 * The exact check of a setting, straight from the question: the least of gap minus required
 * clearance, in millimetres. Shares no arithmetic with the search beyond {@link Gap}.
 */
public final class Spare {
  private Spare() {}

  /**
   * The least spare over every pair, fixed body, room and obstacle; negative when the setting is
   * not valid.
   */
  public static double of(ShelfQuestion question, List<Placed> bodies) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < bodies.size(); i++) {
      Placed body = bodies.get(i);
      BodyKind kind = question.kinds().get(body.kind());
      least = Math.min(least, inRooms(question.space(), kind, body.pose()));
      least = Math.min(least, fromObstacles(question.space(), kind, body.pose()));
      for (int j = 0; j < i; j++) {
        least = Math.min(least, between(question, body, bodies.get(j)));
      }
      for (Placed fixed : question.fixed()) {
        least = Math.min(least, between(question, body, fixed));
      }
    }
    return least;
  }

  /** How much further inside every room a body stands than it must; negative when outside. */
  public static double inRooms(ShelfSpace space, BodyKind kind, Pose pose) {
    double least = Double.POSITIVE_INFINITY;
    for (Room room : space.rooms()) {
      double needed = room.clearance() + kind.tolerance();
      if (room.applies() == Applies.FOOT) {
        least = Math.min(least, Gap.inside(kind.foot(), pose, room.region()) - needed);
      } else {
        for (Part part : kind.parts()) {
          least = Math.min(least, Gap.inside(part.shape(), pose, room.region()) - needed);
        }
      }
    }
    return least;
  }

  /** How much further from every obstacle a body stands than it must; negative when too near. */
  public static double fromObstacles(ShelfSpace space, BodyKind kind, Pose pose) {
    double least = Double.POSITIVE_INFINITY;
    for (Obstacle obstacle : space.obstacles()) {
      double needed = obstacle.clearance() + kind.tolerance();
      if (obstacle.applies() == Applies.FOOT) {
        double gap = Gap.between(kind.foot(), pose, obstacle.shape(), Pose.HERE);
        least = Math.min(least, gap - needed);
        continue;
      }
      for (Part part : kind.parts()) {
        if (part.sharesHeightWith(obstacle.from(), obstacle.to())) {
          double gap = Gap.between(part.shape(), pose, obstacle.shape(), Pose.HERE);
          least = Math.min(least, gap - needed);
        }
      }
    }
    return least;
  }

  /**
   * The least gap of two bodies over the heights where both exist; infinite when there are none.
   */
  public static double gap(BodyKind a, Pose atA, BodyKind b, Pose atB) {
    double least = Double.POSITIVE_INFINITY;
    for (Part first : a.parts()) {
      for (Part second : b.parts()) {
        if (first.sharesHeightWith(second.from(), second.to())) {
          least = Math.min(least, Gap.between(first.shape(), atA, second.shape(), atB));
        }
      }
    }
    return least;
  }

  static double between(ShelfQuestion question, Placed a, Placed b) {
    BodyKind one = question.kinds().get(a.kind());
    BodyKind other = question.kinds().get(b.kind());
    return gap(one, a.pose(), other, b.pose()) - question.required(a.kind(), b.kind());
  }
}
