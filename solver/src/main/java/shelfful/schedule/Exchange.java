package shelfful.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import shelfful.ware.FiringKind;

/**
 * A glaze firing planned once more with all that is in it and what is left of the week: more goes
 * in, or other ware, and what then finds no room is left instead. What would be late in another
 * firing, or asked to go together with others, stays.
 */
final class Exchange {
  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final Admission admission;
  private final Loaded loaded;
  private final long lastDay;

  /**
   * An exchange.
   *
   * @param loaded what is to be planned again
   * @param lastDay on which the last firing that anything may move to is unpacked
   */
  Exchange(Ground ground, RoomBook room, LoadBook loads, Loaded loaded, long lastDay) {
    this.ground = ground;
    this.room = room;
    this.loads = loads;
    this.admission = new Admission(ground, room);
    this.loaded = loaded;
    this.lastDay = lastDay;
  }

  /** A firing and the ware in it. */
  record Loaded(RealFiring firing, List<Chunk> ware) {
    Loaded {
      ware = List.copyOf(ware);
    }
  }

  /** The firing with other ware in it, and what is left of the week then. */
  record Made(Loaded loaded, List<Chunk> open) {
    Made {
      open = List.copyOf(open);
    }
  }

  /** How many of a kind have to stay, how many have to come in, and how many more are on offer. */
  private record Count(int stay, int come, int may) {
    static Count of(int units, boolean stays, boolean comes) {
      return new Count(stays ? units : 0, !stays && comes ? units : 0, stays || comes ? 0 : units);
    }

    Count and(Count more) {
      return new Count(stay + more.stay, come + more.come, may + more.may);
    }

    int must() {
      return stay + come;
    }
  }

  /**
   * Makes it; empty when nothing that is left may go in, or something that has to stay does not.
   *
   * @param open what is left of the week
   * @param eagerness how many times its room what is left counts; infinite where it comes before
   *     all that need not stay
   */
  Optional<Made> make(List<Chunk> open, double eagerness, int steps) {
    List<Chunk> offered = new ArrayList<>(open.stream().filter(this::mayGoIn).toList());
    if (offered.isEmpty()) {
      return Optional.empty();
    }
    boolean insists = Double.isInfinite(eagerness);
    List<Chunk> aside = open.stream().filter(chunk -> !mayGoIn(chunk)).toList();
    Set<UnitKind> left = new HashSet<>();
    offered.forEach(chunk -> left.add(kind(chunk)));
    offered.addAll(loaded.ware());
    offered.sort(Comparator.comparing((Chunk c) -> !hasToStay(c)).thenComparingLong(this::wanted));
    Map<UnitKind, Count> counts = new TreeMap<>(Comparator.comparingInt(UnitKind::index));
    for (Chunk chunk : offered) {
      counts.merge(
          kind(chunk),
          Count.of(chunk.numbers().size(), hasToStay(chunk), insists && open.contains(chunk)),
          Count::and);
    }
    KilnProgram program = loaded.firing().program();
    List<Asked> asked = asked(counts, left, insists ? 1 : eagerness);
    return (insists ? loads.anew(program, asked, steps) : loads.load(program, asked, steps))
        .filter(
            answer ->
                counts.entrySet().stream()
                    .allMatch(one -> answer.count(one.getKey()) >= one.getValue().stay()))
        .map(answer -> made(answer, offered, aside));
  }

  private List<Asked> asked(Map<UnitKind, Count> counts, Set<UnitKind> left, double eagerness) {
    int kiln = loaded.firing().program().kiln();
    int least = room.least(counts.keySet(), kiln);
    List<Asked> asked = new ArrayList<>();
    counts.forEach(
        (kind, count) -> {
          double eager = left.contains(kind) ? eagerness : 1;
          int weight = count.may() == 0 ? 1 : room.weight(kind, kiln, least, eager);
          asked.add(new Asked(kind, count.must(), 0, count.may(), weight));
        });
    return asked;
  }

  private Made made(LoadAnswer answer, List<Chunk> offered, List<Chunk> aside) {
    Map<UnitKind, Integer> in = new HashMap<>();
    List<Chunk> ware = new ArrayList<>();
    List<Chunk> open = new ArrayList<>(aside);
    UnitsByLot units = new UnitsByLot();
    for (Chunk chunk : offered) {
      int all = chunk.numbers().size();
      int here = Math.min(all, answer.count(kind(chunk)) - in.getOrDefault(kind(chunk), 0));
      in.merge(kind(chunk), here, Integer::sum);
      if (here > 0) {
        List<Integer> going = chunk.numbers().subList(0, here);
        ware.add(chunk.of(going));
        units.add(chunk.lot(), going);
      }
      if (here < all) {
        open.add(chunk.of(chunk.numbers().subList(here, all)));
      }
    }
    return new Made(
        new Loaded(loaded.firing().again(ground.request(), answer, units.going()), ware), open);
  }

  private boolean mayGoIn(Chunk chunk) {
    return admission.mayGoIn(chunk, loaded.firing());
  }

  private boolean hasToStay(Chunk chunk) {
    return loaded.ware().contains(chunk)
        && (admission.goesTogether(chunk) || wanted(chunk) < lastDay);
  }

  private long wanted(Chunk chunk) {
    return ground.wanted(chunk.lot());
  }

  private static UnitKind kind(Chunk chunk) {
    return chunk.lot().kind(FiringKind.GLAZE).orElseThrow();
  }
}
