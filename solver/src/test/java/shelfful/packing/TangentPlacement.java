package shelfful.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import shelfful.geometry.DiscBound;
import shelfful.geometry.Pose;

/**
 * What a careful person does without trying again: largest first, each body at the lowest free
 * place (then leftmost), slid down and left until it touches. A baseline to beat, nothing more.
 */
final class TangentPlacement {
  private static final double GRID = 8;
  private static final int TURNS = 8;
  private static final int SLIDES = 14;

  private final ShelfQuestion question;
  private final List<Placed> standing = new ArrayList<>();

  TangentPlacement(ShelfQuestion question) {
    this.question = question;
  }

  /** How many of each kind found a place. */
  int[] counts() {
    int[] placed = new int[question.kinds().size()];
    IntStream.range(0, placed.length)
        .boxed()
        .sorted(Comparator.comparingDouble(kind -> -largest(kind)))
        .forEach(
            kind -> {
              while (placed[kind] < question.count(kind) && place(kind)) {
                placed[kind]++;
              }
            });
    return placed;
  }

  private double largest(int kind) {
    return question.kinds().get(kind).parts().stream()
        .mapToDouble(part -> part.shape().area())
        .max()
        .orElseThrow();
  }

  private boolean place(int kind) {
    DiscBound hull = question.space().rooms().get(0).region().boundingDisc();
    int turns = question.kinds().get(kind).isRound() ? 1 : TURNS;
    for (double y = -hull.radius(); y < hull.radius(); y += GRID) {
      for (double x = -hull.radius(); x < hull.radius(); x += GRID) {
        for (int turn = 0; turn < turns; turn++) {
          Pose pose = new Pose(hull.x() + x, hull.y() + y, 2 * Math.PI * turn / turns);
          if (isFree(kind, pose)) {
            standing.add(new Placed(kind, slide(kind, pose)));
            return true;
          }
        }
      }
    }
    return false;
  }

  private Pose slide(int kind, Pose from) {
    Pose pose = from;
    double step = GRID;
    for (int i = 0; i < SLIDES; i++) {
      Pose down = new Pose(pose.x(), pose.y() - step, pose.angle());
      Pose left = new Pose(pose.x() - step, pose.y(), pose.angle());
      Pose at = pose;
      pose = Arrays.asList(down, left, at).stream().filter(p -> isFree(kind, p)).findFirst().get();
      step = pose == at ? step / 2 : step;
    }
    return pose;
  }

  private boolean isFree(int kind, Pose pose) {
    List<Placed> pair = new ArrayList<>();
    Placed body = new Placed(kind, pose);
    if (Spare.of(question, List.of(body)) < 0) {
      return false;
    }
    for (Placed other : standing) {
      pair.clear();
      pair.add(body);
      pair.add(other);
      double reach =
          question.kinds().get(kind).reach()
              + question.kinds().get(other.kind()).reach()
              + question.required(kind, other.kind());
      double apart = Math.hypot(other.pose().x() - pose.x(), other.pose().y() - pose.y());
      if (apart < reach && Spare.of(question, pair) < 0) {
        return false;
      }
    }
    return true;
  }
}
