package shelfful.packing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** One search for a valid setting: starts, minimisations and hops, in a fixed order. */
final class ShelfSearch {
  private static final int NO_LUCK = 30;
  private static final int NO_LUCK_UNLIKE = 100;
  private static final int MOST_SCATTERED = 12;
  private static final double WORTH_IT = 0.999;

  /**
   * Energy per squared reach of all bodies over which a relaxed setting is not hopped from. In 2200
   * mixed questions giving up at 0.015 lost none that hops would have solved within the same
   * effort.
   */
  private static final double HOPELESS = 0.015;

  private final LayoutEnergy energy;
  private final Minimiser minimiser;
  private final Starts starts;
  private final Hops hops;
  private final BooleanSupplier stop;
  private final double[] spareGradient;
  private long minimisations;
  private boolean races;

  ShelfSearch(ShelfModel model, long seed, BooleanSupplier stop) {
    SplittableRandom random = new SplittableRandom(seed);
    this.energy = new LayoutEnergy(model);
    this.minimiser = new Minimiser(energy);
    Vacancies vacancies = new Vacancies(energy, random);
    this.starts = new Starts(energy, random, vacancies);
    this.hops = new Hops(energy, random, vacancies);
    this.stop = stop;
    this.spareGradient = new double[energy.unknowns()];
  }

  long minimisations() {
    return minimisations;
  }

  /**
   * The first valid setting found, or null. Rounds of hops, the first from the neighbour or a
   * setting built piece by piece, each later one from the best of several scattered starts: plain
   * restarts reach some shelves that hops never do, and the other way about.
   */
  Packed run(Effort effort, List<Placed> near) {
    minimiser.atMost(effort.isHasty() ? Minimiser.HASTY_STEPS : Minimiser.PATIENT_STEPS);
    races = effort.isShort();
    double[] at = new double[energy.unknowns()];
    if (near.isEmpty()) {
      starts.build(at);
    } else {
      starts.near(at, near);
    }
    double least = relax(at, Double.POSITIVE_INFINITY);
    double squaredReach = minimiser.squaredReach();
    double hopeless = HOPELESS * squaredReach;
    long budget = effort.relaxings(least / squaredReach);
    for (int round = 1; ; round++) {
      Packed found = null;
      if (energy.fits()) {
        found = verified(at);
      } else if (least > hopeless) {
        budget -= effort.hops();
      } else {
        found = hop(at, least, Math.min(budget - minimisations, effort.hops()));
      }
      if (found != null || minimisations >= budget || stop.getAsBoolean()) {
        return found;
      }
      least = scatter(at, Math.min(budget - minimisations, Math.min(MOST_SCATTERED, 2L * round)));
    }
  }

  /** Leaves the best of so many scattered starts, relaxed, with the energy evaluated there. */
  private double scatter(double[] at, long tries) {
    double[] best = at.clone();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < tries && !stop.getAsBoolean(); i++) {
      starts.scatter(at);
      double found = relax(at, least);
      if (energy.fits()) {
        return found;
      }
      if (found < least) {
        least = found;
        System.arraycopy(at, 0, best, 0, at.length);
      }
    }
    System.arraycopy(best, 0, at, 0, at.length);
    energy.at(at, spareGradient);
    return least;
  }

  private Packed hop(double[] at, double from, long most) {
    double least = from;
    double[] best = at.clone();
    int luckless = 0;
    int patience = hops.unlike() ? NO_LUCK_UNLIKE : NO_LUCK;
    for (int hop = 0; hop < most && luckless < patience && !stop.getAsBoolean(); hop++) {
      hops.hop(at);
      double found = relax(at, least);
      if (energy.fits()) {
        return verified(at);
      }
      luckless++;
      if (found < least) {
        luckless = found < WORTH_IT * least ? 0 : luckless;
        least = found;
        System.arraycopy(at, 0, best, 0, at.length);
      } else {
        System.arraycopy(best, 0, at, 0, at.length);
        energy.at(at, spareGradient);
      }
    }
    return null;
  }

  /** A long search lets each relaxing settle: some layouts fall late, and far. */
  private double relax(double[] at, double known) {
    minimisations++;
    return races ? minimiser.minimise(at, known) : minimiser.minimise(at);
  }

  /** The setting if it passes the exact check; the search's margin makes a failure unheard of. */
  private Packed verified(double[] at) {
    List<Placed> bodies = energy.setting.placed(at);
    double spare = Spare.of(energy.model.question, bodies);
    return spare >= 0 ? new Packed(bodies, spare) : null;
  }
}
