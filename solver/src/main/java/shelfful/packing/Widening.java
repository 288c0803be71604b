package shelfful.packing;

import java.util.List;
import java.util.SplittableRandom;

/** Tries to hold a setting valid with every clearance widened by one amount. */
final class Widening {
  private static final int MOST_HOPS = 12;

  private final LayoutEnergy energy;
  private final Minimiser minimiser;
  private final Starts starts;
  private final Hops hops;
  private final int tries;

  Widening(LayoutEnergy energy, Effort effort, SplittableRandom random) {
    this.energy = energy;
    this.minimiser = new Minimiser(energy);
    Vacancies vacancies = new Vacancies(energy, random);
    this.starts = new Starts(energy, random, vacancies);
    this.hops = new Hops(energy, random, vacancies);
    this.tries = Math.min(effort.hops(), MOST_HOPS);
  }

  /** A valid setting with more spare than the one given, near the amount asked for, or null. */
  Packed to(double spare, Packed from) {
    energy.widen(spare);
    double[] at = new double[energy.unknowns()];
    starts.near(at, from.bodies());
    double least = minimiser.minimise(at);
    double[] best = at.clone();
    double[] gradient = new double[at.length];
    for (int hop = 0; hop < tries && !energy.fits(); hop++) {
      hops.hop(at);
      double found = minimiser.minimise(at);
      if (energy.fits()) {
        break;
      }
      if (found < least) {
        least = found;
        System.arraycopy(at, 0, best, 0, at.length);
      } else {
        System.arraycopy(best, 0, at, 0, at.length);
        energy.at(at, gradient);
      }
    }
    return energy.fits() ? verified(at, from) : null;
  }

  private Packed verified(double[] at, Packed from) {
    List<Placed> bodies = energy.setting.placed(at);
    double spare = Spare.of(energy.model.question, bodies);
    return spare > from.spare() ? new Packed(bodies, spare) : null;
  }
}
