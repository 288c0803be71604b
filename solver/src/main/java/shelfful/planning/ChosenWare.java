package shelfful.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.ToLongFunction;
import shelfful.choice.ChosenLevel;
import shelfful.choice.KnownLayer;
import shelfful.ware.Zone;

/**
 * Gives the places of chosen layers to lots: the worthiest first, none in a zone its glaze forbids,
 * none that clash. Layers of a column change places where that suits the zones better.
 */
final class ChosenWare {
  private final SketchJudge judge;
  private final boolean anyZones;
  private final boolean someInSets;

  /** By bundle, whether pieces of several lots must go in together. */
  private final boolean[] inSet;

  /** By kind, the worthiest first. */
  private final Lot[][] ofKind;

  /** What a piece weighs, by kind. */
  private final long[] grams;

  /** What a piece is worth, by lot. */
  private final double[] worth;

  ChosenWare(SketchJudge judge) {
    this.judge = judge;
    List<Lot> lots = judge.ware().lots();
    this.anyZones =
        lots.stream().anyMatch(lot -> !lot.forbidden().isEmpty() || !lot.liked().isEmpty());
    this.inSet = new boolean[judge.ware().bundles()];
    int[] lotsOf = new int[inSet.length];
    lots.forEach(lot -> inSet[lot.bundle()] = ++lotsOf[lot.bundle()] > 1);
    this.someInSets = inSet.length < lots.size();
    this.worth = lots.stream().mapToDouble(new PieceWorth(lots)::of).toArray();
    this.grams = new long[judge.ware().kinds().size()];
    judge.ware().kinds().forEach(kind -> grams[kind.index()] = kind.ware().mass().grams());
    this.ofKind = new Lot[judge.ware().kinds().size()][];
    for (int kind = 0; kind < ofKind.length; kind++) {
      int index = kind;
      ofKind[kind] =
          lots.stream()
              .filter(lot -> lot.kind().index() == index)
              .sorted(
                  Comparator.comparingDouble((Lot lot) -> -worth[lot.index()])
                      .thenComparingInt(lot -> -lot.forbidden().size()))
              .toArray(Lot[]::new);
    }
  }

  /** What so many pieces of each lot are worth. */
  double worth(int[] placed) {
    double sum = 0;
    for (int lot = 0; lot < placed.length; lot++) {
      sum += placed[lot] * worth[lot];
    }
    return sum;
  }

  /** What a content weighs. */
  long grams(KnownLayer content) {
    return content.weighed(grams);
  }

  /** A way of giving out, and how good it is. */
  private record Given(Sketch sketch, double worth) {}

  Sketch sketch(List<List<ChosenLevel>> levels) {
    List<List<ChosenLevel>> order = new ArrayList<>();
    levels.forEach(column -> order.add(new ArrayList<>(column)));
    Given best = give(order);
    boolean better = anyZones && best != null;
    while (better) {
      better = false;
      for (List<ChosenLevel> column : order) {
        int movable = column.size();
        if (movable > 0 && column.get(movable - 1).onTop()) {
          movable--;
        }
        for (int a = 0; a < movable; a++) {
          for (int b = a + 1; b < movable; b++) {
            Collections.swap(column, a, b);
            Given other = give(order);
            if (other != null && other.worth > best.worth + 1e-9) {
              best = other;
              better = true;
            } else {
              Collections.swap(column, a, b);
            }
          }
        }
      }
    }
    return best == null ? null : best.sketch;
  }

  /** What levels are worth once pieces of split sets have made way for others of their kinds. */
  double worth(List<List<ChosenLevel>> levels, Stacking stacking) {
    Given given = give(levels, stacking);
    return someInSets ? given.worth - lostToSets(given.sketch.placed()) : given.worth;
  }

  private double lostToSets(int[] placed) {
    int[] whole = judge.leastOfBundles(placed);
    double lost = 0;
    for (Lot[] lots : ofKind) {
      int freed = 0;
      for (Lot lot : lots) {
        int split = placed[lot.index()] - whole[lot.bundle()];
        lost += split * worth[lot.index()];
        freed += split;
      }
      for (Lot lot : lots) {
        int more = inSet[lot.bundle()] ? 0 : Math.min(freed, lot.size() - placed[lot.index()]);
        lost -= more * worth[lot.index()];
        freed -= more;
      }
    }
    return lost;
  }

  private Given give(List<List<ChosenLevel>> levels) {
    // Zones go by heights alone; whether shelves carry the ware is asked of what comes of it.
    StackNeeds needs = needs(levels, content -> 0);
    return judge.stack(needs).map(stacking -> give(levels, stacking)).orElse(null);
  }

  /** What posts and shelves must do for levels, when each content weighs so much. */
  StackNeeds needs(List<List<ChosenLevel>> levels, ToLongFunction<KnownLayer> weight) {
    StackNeeds needs = new StackNeeds(levels.size());
    for (int c = 0; c < levels.size(); c++) {
      for (ChosenLevel level : levels.get(c)) {
        long[] each = level.contents().stream().mapToLong(weight).toArray();
        long height = judge.classes().height(level.heightClass());
        needs = needs.with(c, needs.levels(c), new StackNeeds.Level(height, each));
      }
    }
    return needs;
  }

  private Given give(List<List<ChosenLevel>> levels, Stacking stacking) {
    Sketch sketch = new Sketch(levels.size(), judge.ware().lots().size());
    int[] left = judge.ware().lots().stream().mapToInt(Lot::size).toArray();
    int[] placed = new int[left.length];
    double given = 0;
    for (int c = 0; c < levels.size(); c++) {
      for (int l = 0; l < levels.get(c).size(); l++) {
        List<KnownLayer> contents = levels.get(c).get(l).contents();
        sketch.insertLevel(c, l, contents.size());
        Zone zone = judge.zone(stacking.level(c, l));
        for (int p = 0; p < contents.size(); p++) {
          given += give(contents.get(p).counts(), sketch.counts(c, l, p), left, placed, zone);
        }
      }
    }
    return new Given(sketch, given);
  }

  double give(int[] kinds, int[] counts, int[] left, int[] placed, Zone zone) {
    double given = 0;
    for (int kind = 0; kind < kinds.length; kind++) {
      int wanted = kinds[kind];
      Lot[] lots = ofKind[kind];
      for (int at = 0; at < lots.length && wanted > 0; at++) {
        int lot = lots[at].index();
        if (left[lot] == 0 || mayNotStand(lots[at], counts, placed, zone)) {
          continue;
        }
        int taken = Math.min(wanted, left[lot]);
        counts[lot] += taken;
        placed[lot] += taken;
        left[lot] -= taken;
        wanted -= taken;
        given += taken * (worth[lot] - (likes(lots[at].liked(), zone) ? 0 : 0.001));
      }
    }
    return given;
  }

  private boolean mayNotStand(Lot lot, int[] counts, int[] placed, Zone zone) {
    return lot.forbidden().contains(zone)
        || judge.apart().clashesInFiring(lot.index(), placed)
        || judge.apart().clashesOnLayer(lot.index(), counts);
  }

  private static boolean likes(Set<Zone> liked, Zone zone) {
    return liked.isEmpty() || liked.contains(zone);
  }
}
