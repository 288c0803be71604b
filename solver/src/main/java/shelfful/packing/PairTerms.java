package shelfful.packing;

import shelfful.geometry.Contact;
import shelfful.geometry.Contour;
import shelfful.geometry.PairGap;
import shelfful.geometry.Tolerance;

/** The part of the layout energy that keeps bodies apart, band against band. */
final class PairTerms {
  private final ShelfModel model;
  private final Setting setting;
  private final Contact contact = new Contact();

  PairTerms(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
  }

  /** Adds energy and gradient of all near pairs; {@code extra} is added to each required gap. */
  void add(Neighbours near, double extra) {
    addRound(near, extra);
    addParts(near, extra);
  }

  private void addRound(Neighbours near, double extra) {
    double[] at = setting.at;
    int[] pairs = near.round.numbers;
    for (int p = 0; p < near.round.end; p += 2) {
      int i = pairs[p];
      int j = pairs[p + 1];
      double limit = model.axisDistance[model.kindOf[i] * model.kinds + model.kindOf[j]] + extra;
      double dx = at[2 * j] - at[2 * i];
      double dy = at[2 * j + 1] - at[2 * i + 1];
      double square = dx * dx + dy * dy;
      if (square < limit * limit) {
        double distance = Math.sqrt(square);
        boolean together = distance < Tolerance.NO_LENGTH;
        double ux = together ? 1 : dx / distance;
        double uy = together ? 0 : dy / distance;
        double violation = limit - distance;
        setting.count(violation);
        setting.push(i, violation, ux, uy);
        setting.push(j, violation, -ux, -uy);
      }
    }
  }

  private void addParts(Neighbours near, double extra) {
    double[] xs = setting.contourX;
    double[] ys = setting.contourY;
    int[] parts = near.parts.numbers;
    for (int p = 0, pair = 0; p < near.parts.end; p += Neighbours.PER_PAIR, pair++) {
      int a = parts[p + 2];
      int b = parts[p + 3];
      double dx = xs[b] - xs[a];
      double dy = ys[b] - ys[a];
      double needed = near.gaps[pair] + extra;
      double limit = near.reaches[pair] + needed;
      if (dx * dx + dy * dy < limit * limit) {
        add(parts[p], parts[p + 1], setting.contours[a], setting.contours[b], needed);
      }
    }
  }

  private void add(int i, int j, Contour a, Contour b, double needed) {
    double violation = needed - PairGap.underLimit(a, b, needed, contact);
    if (violation > 0) {
      setting.count(violation);
      setting.push(i, violation, contact.ux(), contact.uy());
      setting.push(j, violation, -contact.ux(), -contact.uy());
      setting.twist(i, violation, contact.armA());
      setting.twist(j, violation, -contact.armB());
    }
  }

  /** The energy between one body's contours, standing anywhere, and another of the setting. */
  double between(int kind, Contour[] ghost, int other, double extra) {
    int pair = kind * model.kinds + model.kindOf[other];
    int[] parts = model.partPairs[pair];
    double needed = model.required[pair] + extra;
    double sum = 0;
    for (int p = 0; p < parts.length; p += 2) {
      Contour b = setting.parts[other][parts[p + 1]];
      if (ghost[parts[p]].isFarFrom(b, needed)) {
        continue;
      }
      double violation = needed - PairGap.underLimit(ghost[parts[p]], b, needed, contact);
      if (violation > 0) {
        sum += violation * violation;
      }
    }
    return sum;
  }
}
