package shelfful.packing;

import java.util.List;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;

/**
 * The exact check of a setting, straight from the question: the least of gap minus required
 * clearance. Shares no arithmetic with the search beyond {@link Gap}.
 */
final class Spare {
  private Spare() {}

  /** The least spare over every pair, obstacle and room; negative when the setting is not valid. */
  static double of(ShelfQuestion question, List<Placed> bodies) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < bodies.size(); i++) {
      Placed body = bodies.get(i);
      least = Math.min(least, inRooms(question, body));
      least = Math.min(least, fromObstacles(question, body));
      for (int j = 0; j < i; j++) {
        least = Math.min(least, between(question, body, bodies.get(j)));
      }
    }
    return least;
  }

  static double inRooms(ShelfQuestion question, Placed body) {
    BodyKind kind = question.kinds().get(body.kind());
    double least = Double.POSITIVE_INFINITY;
    for (Room room : question.space().rooms()) {
      double needed = room.clearance() + kind.tolerance();
      if (room.applies() == Applies.FOOT) {
        least = Math.min(least, Gap.inside(kind.foot(), body.pose(), room.region()) - needed);
      } else {
        for (Part part : kind.parts()) {
          least = Math.min(least, Gap.inside(part.shape(), body.pose(), room.region()) - needed);
        }
      }
    }
    return least;
  }

  static double fromObstacles(ShelfQuestion question, Placed body) {
    BodyKind kind = question.kinds().get(body.kind());
    double least = Double.POSITIVE_INFINITY;
    for (Obstacle obstacle : question.space().obstacles()) {
      for (Part part : kind.parts()) {
        if (part.sharesHeightWith(obstacle.from(), obstacle.to())) {
          double gap = Gap.between(part.shape(), body.pose(), obstacle.shape(), Pose.HERE);
          least = Math.min(least, gap - obstacle.clearance() - kind.tolerance());
        }
      }
    }
    return least;
  }

  static double between(ShelfQuestion question, Placed a, Placed b) {
    double needed = question.required(a.kind(), b.kind());
    double least = Double.POSITIVE_INFINITY;
    for (Part first : question.kinds().get(a.kind()).parts()) {
      for (Part second : question.kinds().get(b.kind()).parts()) {
        if (first.sharesHeightWith(second.from(), second.to())) {
          double gap = Gap.between(first.shape(), a.pose(), second.shape(), b.pose());
          least = Math.min(least, gap - needed);
        }
      }
    }
    return least;
  }
}
