package shelfful.packing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** One search for a valid setting: starts, minimisations and hops, in a fixed order. */
final class ShelfSearch {
  private static final int NO_LUCK = 40;

  private final LayoutEnergy energy;
  private final Minimiser minimiser;
  private final Starts starts;
  private final Hops hops;
  private final BooleanSupplier stop;
  private long minimisations;

  ShelfSearch(ShelfModel model, long seed, BooleanSupplier stop) {
    SplittableRandom random = new SplittableRandom(seed);
    this.energy = new LayoutEnergy(model);
    this.minimiser = new Minimiser(energy);
    Vacancies vacancies = new Vacancies(energy, random);
    this.starts = new Starts(energy, random, vacancies);
    this.hops = new Hops(energy, random, vacancies);
    this.stop = stop;
  }

  long minimisations() {
    return minimisations;
  }

  /** The first valid setting found, or null. */
  Packed run(Effort effort, List<Placed> near) {
    double[] at = new double[energy.unknowns()];
    for (int start = 0; start < effort.starts() && !stop.getAsBoolean(); start++) {
      begin(at, start, near);
      Packed found = from(at, effort.hops());
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private void begin(double[] at, int start, List<Placed> near) {
    if (start == 0 && !near.isEmpty()) {
      starts.near(at, near);
    } else if (start % 2 == 0) {
      starts.build(at);
    } else {
      starts.scatter(at);
    }
  }

  private Packed from(double[] at, int most) {
    double[] best = at.clone();
    double least = relax(at);
    if (energy.fits()) {
      return verified(at);
    }
    System.arraycopy(at, 0, best, 0, at.length);
    int luckless = 0;
    double[] gradient = new double[at.length];
    for (int hop = 0; hop < most && luckless < NO_LUCK && !stop.getAsBoolean(); hop++) {
      hops.hop(at);
      double found = relax(at);
      if (energy.fits()) {
        return verified(at);
      }
      luckless++;
      if (found < least) {
        luckless = found < 0.999 * least ? 0 : luckless;
        least = found;
        System.arraycopy(at, 0, best, 0, at.length);
      } else {
        System.arraycopy(best, 0, at, 0, at.length);
        energy.at(at, gradient);
      }
    }
    return null;
  }

  private double relax(double[] at) {
    minimisations++;
    return minimiser.minimise(at);
  }

  /** The setting if it passes the exact check; the search's margin makes a failure unheard of. */
  private Packed verified(double[] at) {
    List<Placed> bodies = energy.setting.placed(at);
    double spare = Spare.of(energy.model.question, bodies);
    return spare >= 0 ? new Packed(bodies, spare) : null;
  }
}
