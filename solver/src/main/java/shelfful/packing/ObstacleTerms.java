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
  /** Numbers for each entry of what is near. */
  private static final int PER_ENTRY = 3;

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

  /** Obstacles and the bodies and contours near them, one after the other. */
  private final NearList near = new NearList();

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

  /** Takes note of the parts that may come near before a body has moved by a leeway. */
  void follow(double extra, double leeway) {
    near.clear();
    for (int post = 0; post < posts.length; post++) {
      for (int body = 0; body < model.bodies; body++) {
        int kind = model.kindOf[body];
        double needed = required[post][kind] + extra + leeway;
        if (!far(post, kind, needed, setting.at[2 * body], setting.at[2 * body + 1])) {
          follow(post, body, needed);
        }
      }
    }
  }

  private void follow(int post, int body, double needed) {
    int first = setting.firstContour[body];
    if (feetAlone[post]) {
      follow(post, body, setting.firstContour[body + 1] - 1, needed);
    }
    for (int part : exposed[post][model.kindOf[body]]) {
      follow(post, body, first + part, needed);
    }
  }

  private void follow(int post, int body, int contour, double needed) {
    if (!setting.contours[contour].isFarFrom(posts[post], needed)) {
      near.add(post);
      near.add(body);
      near.add(contour);
    }
  }

  /** Adds energy and gradient of every body; {@code extra} is added to each required gap. */
  void add(double extra) {
    int[] all = near.numbers;
    for (int i = 0; i < near.end; i += PER_ENTRY) {
      Contour post = posts[all[i]];
      int body = all[i + 1];
      Contour part = setting.contours[all[i + 2]];
      double needed = required[all[i]][model.kindOf[body]] + extra;
      if (!part.isFarFrom(post, needed)) {
        add(body, part, post, needed);
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
