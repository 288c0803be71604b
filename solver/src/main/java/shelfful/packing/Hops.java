package shelfful.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import shelfful.geometry.Pose;

/**
 * Ways out of a dead end: a squeezed body to the best hole, two unlike bodies exchanged, or
 * everything shaken. Each changes the unknowns it is given, which the energy must just have been
 * evaluated at.
 */
final class Hops {
  private static final double SHAKE = 0.35;
  private static final double EXCHANGES = 0.65;
  private static final double EXCHANGES_OR_MOVES = 0.9;
  private static final double TWIST = 0.6;
  private static final int NEAR_IN_SIZE = 3;

  private final LayoutEnergy energy;
  private final ShelfModel model;
  private final SplittableRandom random;
  private final Vacancies vacancies;

  /** The bodies of each kind present, smallest kind first, and each kind's place in that. */
  private final int[][] bySize;

  private final int[] rankOf;
  private final int[] waits;

  Hops(LayoutEnergy energy, SplittableRandom random, Vacancies vacancies) {
    this.energy = energy;
    this.model = energy.model;
    this.random = random;
    this.vacancies = vacancies;
    int[] kinds =
        Arrays.stream(model.kindOf)
            .distinct()
            .boxed()
            .sorted(Comparator.comparingDouble(kind -> model.reach[kind]))
            .mapToInt(Integer::intValue)
            .toArray();
    this.bySize = new int[kinds.length][];
    this.rankOf = new int[model.kinds];
    for (int rank = 0; rank < kinds.length; rank++) {
      int kind = kinds[rank];
      rankOf[kind] = rank;
      bySize[rank] =
          IntStream.range(0, model.bodies).filter(i -> model.kindOf[i] == kind).toArray();
    }
    this.waits = new int[model.bodies];
  }

  /** Whether there are bodies of more than one kind. */
  boolean unlike() {
    return bySize.length > 1;
  }

  /** Makes one change. */
  void hop(double[] at) {
    for (int i = 0; i < waits.length; i++) {
      waits[i] = Math.max(0, waits[i] - 1);
    }
    double choice = random.nextDouble();
    if (unlike() && choice < EXCHANGES) {
      exchange(at);
    } else if (choice < EXCHANGES_OR_MOVES) {
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

  /** Exchanges two bodies of kinds next to each other in size, which upsets a setting least. */
  private void exchange(double[] at) {
    int first = random.nextInt(model.bodies);
    int rank = rankOf[model.kindOf[first]];
    int apart = 1 + random.nextInt(NEAR_IN_SIZE);
    int other = rank + apart < bySize.length ? rank + apart : rank - apart;
    if (other < 0) {
      other = rank == 0 ? 1 : 0;
    }
    int[] partners = bySize[other];
    int second = partners[random.nextInt(partners.length)];
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
