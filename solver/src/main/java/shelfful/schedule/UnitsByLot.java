package shelfful.schedule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.schedule.RealFiring.Going;

/** Units that go into a firing, gathered lot by lot. */
final class UnitsByLot {
  private final Map<Integer, Lot> lots = new TreeMap<>();
  private final Map<Integer, TreeSet<Integer>> numbers = new TreeMap<>();

  void add(Lot lot, Collection<Integer> some) {
    lots.put(lot.index(), lot);
    numbers.computeIfAbsent(lot.index(), any -> new TreeSet<>()).addAll(some);
  }

  /** All of them, in the order of the lots. */
  List<Going> going() {
    List<Going> going = new ArrayList<>();
    numbers.forEach((lot, all) -> going.add(new Going(lots.get(lot), List.copyOf(all))));
    return going;
  }
}
