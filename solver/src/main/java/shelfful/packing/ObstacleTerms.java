package shelfful.packing;

import java.util.List;
import java.util.stream.IntStream;
import shelfful.geometry.Contact;
import shelfful.geometry.Contour;
import shelfful.geometry.PairGap;

/**
 * The part of the layout energy that keeps bodies clear of obstacles, and of the fixed bodies, each
 * of whose parts is in the way like an obstacle that asks every kind for a clearance of its own.
 * From some obstacles only feet keep clear.
 */
final class ObstacleTerms {
  private final ShelfModel model;
  private final Setting setting;
  private final Contour[] posts;

  /** By obstacle and kind, the gap that is asked for, both tolerances included. */
  private final double[][] required;

  /** By obstacle and kind, the parts that share heights with it. */
  private final int[][][] exposed;

  /** By obstacle, whether only feet keep clear of it. */
  private final boolean[] feetAlone;

  private final Contact contact = new Contact();

  ObstacleTerms(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
    List<Obstacle> obstacles = model.question.space().obstacles();
    int fixedParts =
        model.question.fixed().stream().mapToInt(body -> parts(body.kind()).size()).sum();
    this.posts = new Contour[obstacles.size() + fixedParts];
    this.required = new double[posts.length][model.kinds];
    this.exposed = new int[posts.length][model.kinds][];
    this.feetAlone = new boolean[posts.length];
    int next = 0;
    for (Obstacle obstacle : obstacles) {
      add(next++, obstacle);
    }
    for (Placed body : model.question.fixed()) {
      for (int part = 0; part < parts(body.kind()).size(); part++) {
        add(next++, body, part);
      }
    }
  }

  private List<Part> parts(int kind) {
    return model.question.kinds().get(kind).parts();
  }

  private void add(int post, Obstacle obstacle) {
    posts[post] = Contour.of(obstacle.shape());
    feetAlone[post] = obstacle.applies() == Applies.FOOT;
    for (int kind = 0; kind < model.kinds; kind++) {
      required[post][kind] = obstacle.clearance() + model.tolerance[kind];
      exposed[post][kind] = feetAlone[post] ? new int[0] : exposed(parts(kind), obstacle);
    }
  }

  private void add(int post, Placed body, int part) {
    posts[post] = Contour.of(parts(body.kind()).get(part).shape(), body.pose());
    for (int kind = 0; kind < model.kinds; kind++) {
      int pair = kind * model.kinds + body.kind();
      int[] pairs = model.partPairs[pair];
      required[post][kind] = model.required[pair];
      exposed[post][kind] =
          IntStream.range(0, pairs.length / 2)
              .filter(i -> pairs[2 * i + 1] == part)
              .map(i -> pairs[2 * i])
              .toArray();
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
      double[] asked = required[post];
      for (int body = 0; body < model.bodies; body++) {
        int kind = model.kindOf[body];
        double needed = asked[kind] + extra;
        if (far(post, kind, needed, setting.at[2 * body], setting.at[2 * body + 1])) {
          continue;
        }
        if (feetAlone[post]) {
          add(body, setting.foot[body], posts[post], needed);
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
      double needed = required[post][ghost.kind] + extra;
      if (far(post, ghost.kind, needed, ghost.x, ghost.y)) {
        continue;
      }
      if (feetAlone[post]) {
        sum += energy(ghost.foot, posts[post], needed);
      }
      for (int p : exposed[post][ghost.kind]) {
        sum += energy(ghost.parts[p], posts[post], needed);
      }
    }
    return sum;
  }

  private double energy(Contour part, Contour post, double needed) {
    double gap = PairGap.underLimit(part, post, needed, contact);
    return gap < needed ? (needed - gap) * (needed - gap) : 0;
  }
}
