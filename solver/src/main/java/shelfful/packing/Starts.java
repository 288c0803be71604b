package shelfful.packing;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import shelfful.geometry.DiscBound;
import shelfful.geometry.Pose;

/** Settings to begin a search from. */
final class Starts {
  private final LayoutEnergy energy;
  private final ShelfModel model;
  private final SplittableRandom random;
  private final Vacancies vacancies;

  Starts(LayoutEnergy energy, SplittableRandom random, Vacancies vacancies) {
    this.energy = energy;
    this.model = energy.model;
    this.random = random;
    this.vacancies = vacancies;
  }

  /** Everything anywhere in the room's hull, at any rotation. */
  void scatter(double[] at) {
    DiscBound hull = model.hull;
    for (int i = 0; i < model.bodies; i++) {
      double room = Math.max(hull.radius() / 10, hull.radius() - model.reach[model.kindOf[i]]);
      double distance = room * Math.sqrt(random.nextDouble());
      double bearing = random.nextDouble() * 2 * Math.PI;
      double x = hull.x() + distance * Math.cos(bearing);
      double y = hull.y() + distance * Math.sin(bearing);
      energy.setting.put(at, i, new Pose(x, y, random.nextDouble() * 2 * Math.PI));
    }
  }

  /**
   * As in a neighbouring setting, as far as it has the bodies; the others, largest first, each in
   * the best hole left.
   */
  void near(double[] at, List<Placed> neighbour) {
    boolean[] present = new boolean[model.bodies];
    for (Placed placed : neighbour) {
      int body = slot(placed.kind(), present);
      if (body >= 0) {
        present[body] = true;
        energy.setting.put(at, body, placed.pose());
      }
    }
    fill(at, present);
  }

  /** Largest first, each in the best hole left. */
  void build(double[] at) {
    fill(at, new boolean[model.bodies]);
  }

  private void fill(double[] at, boolean[] present) {
    Integer[] order = new Integer[model.bodies];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) -> Double.compare(model.reach[model.kindOf[b]], model.reach[model.kindOf[a]]));
    energy.setting.begin(at, new double[energy.unknowns()]);
    for (int body : order) {
      if (!present[body]) {
        energy.setting.put(at, body, vacancies.bestFor(body, present));
        energy.setting.stand(body);
        present[body] = true;
      }
    }
  }

  private int slot(int kind, boolean[] taken) {
    for (int i = 0; i < model.bodies; i++) {
      if (!taken[i] && model.kindOf[i] == kind) {
        return i;
      }
    }
    return -1;
  }
}
