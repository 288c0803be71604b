package shelfful.packing;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Bound;
import shelfful.geometry.Contact;
import shelfful.geometry.Contour;
import shelfful.geometry.PairGap;
import shelfful.geometry.Wall;

/** The part of the layout energy that keeps bodies in their rooms and clear of obstacles. */
final class FixedTerms {
  private record Edge(Wall wall, boolean foot, double clearance) {}

  private final ShelfModel model;
  private final Setting setting;
  private final List<Edge> edges = new ArrayList<>();
  private final Contour[] posts;

  /** For each kind and obstacle, the parts that share heights with it. */
  private final int[][][] exposed;

  private final Contact contact = new Contact();

  FixedTerms(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
    ShelfSpace space = model.question.space();
    for (Room room : space.rooms()) {
      for (Bound bound : room.region().bounds()) {
        edges.add(new Edge(Wall.of(bound), room.applies() == Applies.FOOT, room.clearance()));
      }
    }
    this.posts =
        space.obstacles().stream().map(post -> Contour.of(post.shape())).toArray(Contour[]::new);
    this.exposed = new int[model.kinds][posts.length][];
    for (int kind = 0; kind < model.kinds; kind++) {
      for (int post = 0; post < posts.length; post++) {
        exposed[kind][post] = exposed(kind, space.obstacles().get(post));
      }
    }
  }

  private int[] exposed(int kind, Obstacle obstacle) {
    List<Part> parts = model.question.kinds().get(kind).parts();
    List<Integer> found = new ArrayList<>();
    for (int p = 0; p < parts.size(); p++) {
      if (parts.get(p).sharesHeightWith(obstacle.from(), obstacle.to())) {
        found.add(p);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Adds energy and gradient of every body; {@code extra} is added to each required gap. */
  void add(double extra) {
    for (int i = 0; i < model.bodies; i++) {
      addEdges(i, extra);
      addPosts(i, extra);
    }
  }

  private void addEdges(int body, double extra) {
    double more = model.tolerance[model.kindOf[body]] + extra;
    for (int e = 0; e < edges.size(); e++) {
      Edge edge = edges.get(e);
      double needed = edge.clearance + more;
      if (edge.foot) {
        addEdge(body, setting.foot[body], edge.wall, needed);
      } else {
        for (Contour part : setting.parts[body]) {
          addEdge(body, part, edge.wall, needed);
        }
      }
    }
  }

  private void addEdge(int body, Contour part, Wall wall, double needed) {
    double violation = needed - wall.underLimit(part, needed, contact);
    if (violation > 0) {
      setting.count(violation);
      setting.push(body, violation, contact.ux(), contact.uy());
      setting.twist(body, violation, contact.armA());
    }
  }

  private void addPosts(int body, double extra) {
    int kind = model.kindOf[body];
    for (int post = 0; post < posts.length; post++) {
      double needed = clearance(kind, post, extra);
      for (int p : exposed[kind][post]) {
        Contour part = setting.parts[body][p];
        double violation = needed - PairGap.underLimit(part, posts[post], needed, contact);
        if (violation > 0) {
          setting.count(violation);
          setting.push(body, violation, contact.ux(), contact.uy());
          setting.twist(body, violation, contact.armA());
        }
      }
    }
  }

  private double clearance(int kind, int post, double extra) {
    return model.question.space().obstacles().get(post).clearance() + model.tolerance[kind] + extra;
  }

  /** The energy of a body's contours, standing anywhere, against rooms and obstacles. */
  double of(int kind, Contour[] ghost, Contour foot, double extra) {
    double sum = 0;
    double more = model.tolerance[kind] + extra;
    for (Edge edge : edges) {
      double needed = edge.clearance + more;
      if (edge.foot) {
        sum += square(needed - edge.wall.underLimit(foot, needed, contact));
      } else {
        for (Contour part : ghost) {
          sum += square(needed - edge.wall.underLimit(part, needed, contact));
        }
      }
    }
    for (int post = 0; post < posts.length; post++) {
      double needed = clearance(kind, post, extra);
      for (int p : exposed[kind][post]) {
        sum += square(needed - PairGap.underLimit(ghost[p], posts[post], needed, contact));
      }
    }
    return sum;
  }

  private static double square(double violation) {
    return violation > 0 ? violation * violation : 0;
  }
}
