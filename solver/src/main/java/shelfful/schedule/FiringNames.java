package shelfful.schedule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import shelfful.week.PlannedFiring;

/**
 * Names firings so that one which stays much the same keeps its name: the held ones their own, the
 * others that of the earlier firing of the same kiln and program they have most pieces of, and the
 * rest numbers that were never used.
 */
final class FiringNames {
  private final Collection<PlannedFiring> earlier;
  private final Set<String> used = new TreeSet<>();

  FiringNames(Collection<PlannedFiring> earlier) {
    this.earlier = earlier;
  }

  /** A name for each firing, in their order. */
  List<String> of(List<RealFiring> firings) {
    Map<RealFiring, String> names = new IdentityHashMap<>();
    for (RealFiring firing : firings) {
      firing.held().ifPresent(held -> take(names, firing, held.id()));
    }
    earlier.forEach(firing -> matched(firing, firings, names));
    Set<String> taken = new TreeSet<>(used);
    earlier.forEach(firing -> taken.add(firing.id()));
    int next = 1;
    List<String> all = new ArrayList<>();
    for (RealFiring firing : firings) {
      while (!names.containsKey(firing) && !taken.add("F" + next)) {
        next++;
      }
      all.add(names.getOrDefault(firing, "F" + next));
    }
    return all;
  }

  private void matched(
      PlannedFiring before, List<RealFiring> firings, Map<RealFiring, String> names) {
    RealFiring best = null;
    int most = 0;
    for (RealFiring firing : firings) {
      int common = names.containsKey(firing) ? 0 : common(before, firing);
      if (common > most) {
        most = common;
        best = firing;
      }
    }
    if (best != null && !used.contains(before.id())) {
      take(names, best, before.id());
    }
  }

  private void take(Map<RealFiring, String> names, RealFiring firing, String name) {
    names.put(firing, name);
    used.add(name);
  }

  private static int common(PlannedFiring before, RealFiring firing) {
    if (!before.kilnId().equals(firing.program().kilnId())
        || !before.programId().equals(firing.program().program().id())) {
      return 0;
    }
    Set<Ground.UnitKey> pieces = new HashSet<>();
    before
        .portions()
        .forEach(p -> p.numbers().forEach(n -> pieces.add(new Ground.UnitKey(p.batchId(), n))));
    int common = 0;
    for (RealFiring.Going going : firing.going()) {
      for (shelfful.week.WareLine line : going.lot().going(firing.program().program().kind())) {
        for (int number : going.numbers()) {
          common += pieces.contains(new Ground.UnitKey(line.batch().id(), number)) ? 1 : 0;
        }
      }
    }
    return common;
  }
}
