package shelfful.packing;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;

/**
 * The area that obstacles take from a room. A body grown by its tolerance and half the least
 * clearance c stays clear of an obstacle grown by the obstacle's own clearance less c/2; so that
 * grown obstacle's area is lost, as far as it surely lies in the room and overlaps no other.
 */
final class ObstacleArea {
  private ObstacleArea() {}

  static double within(Slice slice, Room room, double inset, double halfClearance) {
    List<Obstacle> counted = new ArrayList<>();
    double lost = 0;
    for (Obstacle obstacle : slice.space.obstacles()) {
      double growth = obstacle.clearance() - halfClearance;
      boolean forBodies = obstacle.applies() == Applies.BODY;
      boolean there = forBodies && obstacle.from() <= slice.height && slice.height < obstacle.to();
      if (there
          && growth >= 0
          && Gap.inside(obstacle.shape(), Pose.HERE, room.region()) >= inset + growth
          && counted.stream().allMatch(other -> clear(obstacle, other, halfClearance))) {
        counted.add(obstacle);
        lost += obstacle.shape().areaGrownBy(growth);
      }
    }
    return lost;
  }

  private static boolean clear(Obstacle a, Obstacle b, double halfClearance) {
    return Gap.between(a.shape(), Pose.HERE, b.shape(), Pose.HERE)
        >= a.clearance() + b.clearance() - 2 * halfClearance;
  }
}
