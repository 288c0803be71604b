package shelfful.packing;

import java.util.SplittableRandom;
import shelfful.geometry.Pose;

/**
 * Looks for the place where one more body intrudes least: tries many spots at random, then feels
 * its way downhill from the best.
 */
final class Vacancies {
  private static final int TRIES = 60;
  private static final int TRIES_PER_BODY = 3;
  private static final int REFINEMENTS = 10;

  private final LayoutEnergy energy;
  private final ShelfModel model;
  private final SplittableRandom random;
  private final Ghost[] ghosts;
  private double bestX;
  private double bestY;
  private double bestAngle;
  private double best;

  Vacancies(LayoutEnergy energy, SplittableRandom random) {
    this.energy = energy;
    this.model = energy.model;
    this.random = random;
    this.ghosts = new Ghost[model.kinds];
  }

  /** The best place found for a body among those present, as the energy's setting now stands. */
  Pose bestFor(int body, boolean[] present) {
    int kind = model.kindOf[body];
    if (ghosts[kind] == null) {
      ghosts[kind] = new Ghost(model, kind);
    }
    Ghost ghost = ghosts[kind];
    boolean turns = energy.setting.turn[body] >= 0;
    best = Double.POSITIVE_INFINITY;
    int tries = TRIES + TRIES_PER_BODY * model.bodies;
    for (int t = 0; t < tries && best > 0; t++) {
      double distance = model.hull.radius() * Math.sqrt(random.nextDouble());
      double bearing = random.nextDouble() * 2 * Math.PI;
      double angle = turns ? random.nextDouble() * 2 * Math.PI : 0;
      look(
          ghost,
          model.hull.x() + distance * Math.cos(bearing),
          model.hull.y() + distance * Math.sin(bearing),
          angle,
          present);
    }
    feel(ghost, turns, present);
    return new Pose(bestX, bestY, bestAngle);
  }

  /** How much the place last found still intrudes, mm². */
  double intrusion() {
    return best;
  }

  private void look(Ghost ghost, double x, double y, double angle, boolean[] present) {
    ghost.stand(x, y, angle);
    double found = energy.intrusion(ghost, present, best);
    if (found < best) {
      best = found;
      bestX = x;
      bestY = y;
      bestAngle = angle;
    }
  }

  private void feel(Ghost ghost, boolean turns, boolean[] present) {
    double step = ghost.reach / 2;
    for (int r = 0; r < REFINEMENTS && best > 0; r++) {
      double before = best;
      double x = bestX;
      double y = bestY;
      double angle = bestAngle;
      look(ghost, x + step, y, angle, present);
      look(ghost, x - step, y, angle, present);
      look(ghost, x, y + step, angle, present);
      look(ghost, x, y - step, angle, present);
      if (turns) {
        look(ghost, x, y, angle + step / ghost.reach, present);
        look(ghost, x, y, angle - step / ghost.reach, present);
      }
      if (best == before) {
        step /= 2;
      }
    }
  }
}
