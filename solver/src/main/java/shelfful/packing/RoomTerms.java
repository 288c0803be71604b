package shelfful.packing;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Bound;
import shelfful.geometry.Contact;
import shelfful.geometry.Contour;
import shelfful.geometry.Wall;

/** The part of the layout energy that keeps bodies in their rooms. */
final class RoomTerms {
  /** One bound of one room, with how far inside it each round kind's axis must stay. */
  private record Edge(Wall wall, boolean foot, double clearance, double[] axisInset) {}

  private final ShelfModel model;
  private final Setting setting;
  private final Edge[] edges;
  private final Contact contact = new Contact();

  /** Bodies and the walls they are near, one after the other. */
  private final NearList near = new NearList();

  RoomTerms(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
    List<Edge> all = new ArrayList<>();
    for (Room room : model.question.space().rooms()) {
      double[] insets = new double[model.kinds];
      for (int kind = 0; kind < model.kinds; kind++) {
        insets[kind] = model.round[kind] ? model.axisInset(room, kind) : 0;
      }
      boolean foot = room.applies() == Applies.FOOT;
      for (Bound bound : room.region().bounds()) {
        all.add(new Edge(Wall.of(bound), foot, room.clearance(), insets));
      }
    }
    this.edges = all.toArray(new Edge[0]);
  }

  /** Takes note of the bodies that may come to need a wall before one has moved by a leeway. */
  void follow(double extra, double leeway) {
    near.clear();
    for (int body = 0; body < model.bodies; body++) {
      double x = setting.at[2 * body];
      double y = setting.at[2 * body + 1];
      for (int edge = 0; edge < edges.length; edge++) {
        double limit = inset(edges[edge], body) + extra + leeway;
        if (edges[edge].wall.underLimit(x, y, limit, contact) < limit) {
          near.add(body);
          near.add(edge);
        }
      }
    }
  }

  /** How far inside a wall a body's axis has nothing to do with it, but for the extra. */
  private double inset(Edge edge, int body) {
    int kind = model.kindOf[body];
    return body < model.roundBodies
        ? edge.axisInset[kind]
        : model.reach[kind] + edge.clearance + model.tolerance[kind];
  }

  /** Adds energy and gradient of every body; {@code extra} is added to each required gap. */
  void add(double extra) {
    int[] all = near.numbers;
    for (int i = 0; i < near.end; i += 2) {
      int body = all[i];
      if (body < model.roundBodies) {
        addRound(body, edges[all[i + 1]], extra);
      } else {
        addParts(body, edges[all[i + 1]], model.tolerance[model.kindOf[body]] + extra);
      }
    }
  }

  private void addRound(int body, Edge edge, double extra) {
    double x = setting.at[2 * body];
    double y = setting.at[2 * body + 1];
    double needed = edge.axisInset[model.kindOf[body]] + extra;
    double violation = needed - edge.wall.underLimit(x, y, needed, contact);
    if (violation > 0) {
      setting.count(violation);
      setting.push(body, violation, contact.ux(), contact.uy());
    }
  }

  private void addParts(int body, Edge edge, double more) {
    double reach = model.reach[model.kindOf[body]];
    double x = setting.at[2 * body];
    double y = setting.at[2 * body + 1];
    double needed = edge.clearance + more;
    if (edge.wall.underLimit(x, y, reach + needed, contact) >= reach + needed) {
      return;
    }
    if (edge.foot) {
      addPart(body, setting.foot[body], edge.wall, needed);
    } else {
      for (Contour part : setting.parts[body]) {
        addPart(body, part, edge.wall, needed);
      }
    }
  }

  private void addPart(int body, Contour part, Wall wall, double needed) {
    double violation = needed - wall.underLimit(part, needed, contact);
    if (violation > 0) {
      setting.count(violation);
      setting.push(body, violation, contact.ux(), contact.uy());
      setting.twist(body, violation, contact.armA());
    }
  }

  /** The energy of one more body, standing anywhere. */
  double of(Ghost ghost, double extra) {
    double sum = 0;
    double more = model.tolerance[ghost.kind] + extra;
    for (Edge edge : edges) {
      if (model.round[ghost.kind]) {
        double needed = edge.axisInset[ghost.kind] + extra;
        sum += square(needed - edge.wall.underLimit(ghost.x, ghost.y, needed, contact));
      } else if (edge.foot) {
        double needed = edge.clearance + more;
        sum += square(needed - edge.wall.underLimit(ghost.foot, needed, contact));
      } else {
        double needed = edge.clearance + more;
        for (Contour part : ghost.parts) {
          sum += square(needed - edge.wall.underLimit(part, needed, contact));
        }
      }
    }
    return sum;
  }

  private static double square(double violation) {
    return violation > 0 ? violation * violation : 0;
  }
}
