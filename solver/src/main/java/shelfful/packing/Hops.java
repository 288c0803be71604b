package shelfful.packing;

import java.util.Arrays;
import java.util.SplittableRandom;
import shelfful.geometry.Pose;

/**
 * Ways out of a dead end: a squeezed body to the best hole, two unlike bodies exchanged, or
 * everything shaken. Each changes the unknowns it is given, which the energy must just have been
 * evaluated at.
 */
final class Hops {
  private static final double SHAKE = 0.35;
  private static final double TWIST = 0.6;

  private final LayoutEnergy energy;
  private final ShelfModel model;
  private final SplittableRandom random;
  private final Vacancies vacancies;
  private final boolean unlike;
  private final int[] waits;

  Hops(LayoutEnergy energy, SplittableRandom random, Vacancies vacancies) {
    this.energy = energy;
    this.model = energy.model;
    this.random = random;
    this.vacancies = vacancies;
    this.unlike = Arrays.stream(model.kindOf).distinct().count() > 1;
    this.waits = new int[model.bodies];
  }

  /** Makes one change. */
  void hop(double[] at) {
    for (int i = 0; i < waits.length; i++) {
      waits[i] = Math.max(0, waits[i] - 1);
    }
    double choice = random.nextDouble();
    if (unlike && choice < 0.45) {
      exchange(at);
    } else if (choice < 0.85) {
      relocate(at);
    } else {
      shake(at);
    }
  }

  /** Takes the body that suffers most, among those not just moved, to the best hole. */
  private void relocate(double[] at) {
    int body = squeezed();
    waits[body] = 2 + random.nextInt(1 + model.bodies / 3);
    boolean[] present = new boolean[model.bodies];
    Arrays.fill(present, true);
    present[body] = false;
    Pose hole = vacancies.bestFor(body, present);
    energy.setting.put(at, body, hole);
  }

  private int squeezed() {
    double[] pain = energy.setting.pain;
    int worst = random.nextInt(model.bodies);
    double most = -1;
    for (int i = 0; i < model.bodies; i++) {
      double felt = waits[i] > 0 ? -1 : pain[i] * (0.5 + random.nextDouble());
      if (felt > most) {
        most = felt;
        worst = i;
      }
    }
    return worst;
  }

  private void exchange(double[] at) {
    int first = squeezed();
    int second = random.nextInt(model.bodies);
    for (int tries = 0; model.kindOf[first] == model.kindOf[second] && tries < 50; tries++) {
      second = random.nextInt(model.bodies);
      first = tries > 10 ? random.nextInt(model.bodies) : first;
    }
    Pose there = energy.setting.pose(at, second);
    energy.setting.put(at, second, energy.setting.pose(at, first));
    energy.setting.put(at, first, there);
  }

  private void shake(double[] at) {
    for (int i = 0; i < model.bodies; i++) {
      double size = SHAKE * model.reach[model.kindOf[i]];
      at[2 * i] += size * (2 * random.nextDouble() - 1);
      at[2 * i + 1] += size * (2 * random.nextDouble() - 1);
      if (energy.setting.turn[i] >= 0) {
        double lever = energy.setting.lever(i);
        at[energy.setting.turn[i]] += TWIST * lever * (2 * random.nextDouble() - 1);
      }
    }
  }
}
