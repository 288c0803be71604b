package shelfful.packing;

import java.util.List;
import java.util.stream.IntStream;
import shelfful.geometry.Contact;
import shelfful.geometry.Contour;
import shelfful.geometry.PairGap;

/** The part of the layout energy that keeps bodies clear of obstacles. */
final class ObstacleTerms {
  private final ShelfModel model;
  private final Setting setting;
  private final Contour[] posts;
  private final double[] clearance;

  /** By obstacle and kind, the parts that share heights with it. */
  private final int[][][] exposed;

  private final Contact contact = new Contact();

  ObstacleTerms(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
    List<Obstacle> obstacles = model.question.space().obstacles();
    this.posts = new Contour[obstacles.size()];
    this.clearance = new double[posts.length];
    this.exposed = new int[posts.length][model.kinds][];
    for (int post = 0; post < posts.length; post++) {
      Obstacle obstacle = obstacles.get(post);
      posts[post] = Contour.of(obstacle.shape());
      clearance[post] = obstacle.clearance();
      for (int kind = 0; kind < model.kinds; kind++) {
        exposed[post][kind] = exposed(model.question.kinds().get(kind).parts(), obstacle);
      }
    }
  }

  private static int[] exposed(List<Part> parts, Obstacle obstacle) {
    return IntStream.range(0, parts.size())
        .filter(p -> parts.get(p).sharesHeightWith(obstacle.from(), obstacle.to()))
        .toArray();
  }

  /** Adds energy and gradient of every body; {@code extra} is added to each required gap. */
  void add(double extra) {
    for (int post = 0; post < posts.length; post++) {
      for (int body = 0; body < model.bodies; body++) {
        int kind = model.kindOf[body];
        double needed = clearance[post] + model.tolerance[kind] + extra;
        if (far(post, kind, needed, setting.at[2 * body], setting.at[2 * body + 1])) {
          continue;
        }
        for (int p : exposed[post][kind]) {
          add(body, setting.parts[body][p], posts[post], needed);
        }
      }
    }
  }

  private void add(int body, Contour part, Contour post, double needed) {
    double violation = needed - PairGap.underLimit(part, post, needed, contact);
    if (violation > 0) {
      setting.count(violation);
      setting.push(body, violation, contact.ux(), contact.uy());
      setting.twist(body, violation, contact.armA());
    }
  }

  private boolean far(int post, int kind, double needed, double x, double y) {
    double dx = x - posts[post].x();
    double dy = y - posts[post].y();
    double limit = model.reach[kind] + posts[post].outerRadius() + needed;
    return dx * dx + dy * dy >= limit * limit;
  }

  /** The energy of one more body, standing anywhere. */
  double of(Ghost ghost, double extra) {
    double sum = 0;
    for (int post = 0; post < posts.length; post++) {
      double needed = clearance[post] + model.tolerance[ghost.kind] + extra;
      if (far(post, ghost.kind, needed, ghost.x, ghost.y)) {
        continue;
      }
      for (int p : exposed[post][ghost.kind]) {
        double gap = PairGap.underLimit(ghost.parts[p], posts[post], needed, contact);
        sum += gap < needed ? (needed - gap) * (needed - gap) : 0;
      }
    }
    return sum;
  }
}
