package shelfful.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shelfful.geometry.Contour;
import shelfful.geometry.Pose;

/**
 * The bodies of a model as they stand during a search: working memory for the terms of the layout
 * energy. Positions come first in the vector of unknowns (x and y of each body), then the rotations
 * of those that may turn, each times the body's reach so that all unknowns are millimetres.
 */
final class Setting {
  final ShelfModel model;
  final int unknowns;

  /** Where a body's rotation is among the unknowns, or -1. */
  final int[] turn;

  /** Contours by body and part, and of the foot; null for round bodies. */
  final Contour[][] parts;

  final Contour[] foot;

  /** All contours, body by body: the parts and then the foot. */
  final Contour[] contours;

  /** By body, where its contours begin among all; one more than there are bodies. */
  final int[] firstContour;

  /** Where the contours have their centres: what nearly every pair is told apart by. */
  final double[] contourX;

  final double[] contourY;

  /** Each body's share of the energy. */
  final double[] pain;

  double[] at;
  double[] gradient;
  double energy;
  double worst;

  Setting(ShelfModel model) {
    this.model = model;
    int bodies = model.bodies;
    this.turn = new int[bodies];
    this.parts = new Contour[bodies][];
    this.foot = new Contour[bodies];
    this.pain = new double[bodies];
    this.firstContour = new int[bodies + 1];
    List<Contour> all = new ArrayList<>();
    int next = 2 * bodies;
    for (int i = 0; i < bodies; i++) {
      BodyKind kind = model.question.kinds().get(model.kindOf[i]);
      parts[i] = contours(kind);
      foot[i] = Contour.of(kind.foot());
      all.addAll(List.of(parts[i]));
      all.add(foot[i]);
      firstContour[i + 1] = all.size();
      turn[i] = i >= model.roundBodies && kind.mayTurn() ? next++ : -1;
    }
    this.unknowns = next;
    this.contours = all.toArray(new Contour[0]);
    this.contourX = new double[contours.length];
    this.contourY = new double[contours.length];
  }

  static Contour[] contours(BodyKind kind) {
    return kind.parts().stream().map(part -> Contour.of(part.shape())).toArray(Contour[]::new);
  }

  /** Takes up positions and forgets the last evaluation. */
  void begin(double[] unknownsAt, double[] gradientInto) {
    at = unknownsAt;
    gradient = gradientInto;
    energy = 0;
    worst = 0;
    Arrays.fill(gradient, 0);
    Arrays.fill(pain, 0);
    for (int i = model.contoursFrom(); i < model.bodies; i++) {
      stand(i);
    }
  }

  /** Moves the contours of one body to where the unknowns say. */
  void stand(int body) {
    double cos = 1;
    double sin = 0;
    if (turn[body] >= 0) {
      double angle = angle(at, body);
      cos = Math.cos(angle);
      sin = Math.sin(angle);
    }
    double x = at[2 * body];
    double y = at[2 * body + 1];
    for (int i = firstContour[body]; i < firstContour[body + 1]; i++) {
      contours[i].place(x, y, cos, sin);
      contourX[i] = contours[i].x();
      contourY[i] = contours[i].y();
    }
  }

  double lever(int body) {
    return model.reach[model.kindOf[body]];
  }

  double angle(double[] unknownsAt, int body) {
    return turn[body] < 0 ? 0 : unknownsAt[turn[body]] / lever(body);
  }

  /** Sets a body's position and rotation among the unknowns. */
  void put(double[] unknownsAt, int body, Pose pose) {
    unknownsAt[2 * body] = pose.x();
    unknownsAt[2 * body + 1] = pose.y();
    if (turn[body] >= 0) {
      unknownsAt[turn[body]] = pose.angle() * lever(body);
    }
  }

  Pose pose(double[] unknownsAt, int body) {
    return new Pose(unknownsAt[2 * body], unknownsAt[2 * body + 1], angle(unknownsAt, body));
  }

  /** Counts a violation against a body whose gap shrinks as it moves along (ux, uy). */
  void push(int body, double violation, double ux, double uy) {
    gradient[2 * body] += 2 * violation * ux;
    gradient[2 * body + 1] += 2 * violation * uy;
    pain[body] += violation * violation;
  }

  /** Counts a violation's moment; the gap shrinks by {@code arm} per radian of the body's turn. */
  void twist(int body, double violation, double arm) {
    int index = turn[body];
    if (index >= 0) {
      gradient[index] += 2 * violation * arm / lever(body);
    }
  }

  void count(double violation) {
    energy += violation * violation;
    worst = Math.max(worst, violation);
  }

  /** The bodies in order of kind. */
  List<Placed> placed(double[] unknownsAt) {
    List<Placed> all = new ArrayList<>();
    for (int kind = 0; kind < model.kinds; kind++) {
      for (int i = 0; i < model.bodies; i++) {
        if (model.kindOf[i] == kind) {
          all.add(new Placed(kind, pose(unknownsAt, i)));
        }
      }
    }
    return all;
  }
}
