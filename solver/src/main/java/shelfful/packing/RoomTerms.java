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

  /** Adds energy and gradient of every body; {@code extra} is added to each required gap. */
  void add(double extra) {
    for (int i = 0; i < model.roundBodies; i++) {
      addRound(i, extra);
    }
    for (int i = model.roundBodies; i < model.bodies; i++) {
      addParts(i, model.tolerance[model.kindOf[i]] + extra);
    }
  }

  private void addRound(int body, double extra) {
    double x = setting.at[2 * body];
    double y = setting.at[2 * body + 1];
    int kind = model.kindOf[body];
    for (Edge edge : edges) {
      double needed = edge.axisInset[kind] + extra;
      double violation = needed - edge.wall.underLimit(x, y, needed, contact);
      if (violation > 0) {
        setting.count(violation);
        setting.push(body, violation, contact.ux(), contact.uy());
      }
    }
  }

  private void addParts(int body, double more) {
    double reach = model.reach[model.kindOf[body]];
    double x = setting.at[2 * body];
    double y = setting.at[2 * body + 1];
    for (Edge edge : edges) {
      double needed = edge.clearance + more;
      if (edge.wall.underLimit(x, y, reach + needed, contact) >= reach + needed) {
        continue;
      }
      if (edge.foot) {
        addPart(body, setting.foot[body], edge.wall, needed);
      } else {
        for (Contour part : setting.parts[body]) {
          addPart(body, part, edge.wall, needed);
        }
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
