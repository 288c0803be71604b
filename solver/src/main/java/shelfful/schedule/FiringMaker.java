package shelfful.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.load.Load;
import shelfful.schedule.RealFiring.Going;
import shelfful.ware.FiringKind;

/** Really plans the load of one turn: what was given to it, and what else is ready to fill it. */
final class FiringMaker {
  /** What is offered beyond a kilnful, so that no room is left for want of an offer. */
  private static final double OFFER = 1.3;

  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;

  FiringMaker(Ground ground, RoomBook room, LoadBook loads) {
    this.ground = ground;
    this.room = room;
    this.loads = loads;
  }

  /** Where a chunk is to go next. */
  record Hints(Optional<Hint> bisque, Optional<Hint> glaze) {
    static final Hints NONE = new Hints(Optional.empty(), Optional.empty());

    Hints with(FiringKind kind, Optional<Hint> hint) {
      return kind == FiringKind.BISQUE ? new Hints(hint, glaze) : new Hints(bisque, hint);
    }
  }

  /**
   * What came of it.
   *
   * @param kind of the firing
   * @param firing empty when nothing went in
   * @param taken units of each chunk that went in
   * @param asThought whether all that was given to it went in
   */
  record Made(
      FiringKind kind,
      Optional<RealFiring> firing,
      Map<Chunk, List<Integer>> taken,
      boolean asThought) {}

  /** One unit on offer. */
  private record Offered(Share share, int number, boolean must) {}

  Made make(Reckoning found, Turn turn, Optional<HeldTurn> held, Rollout.Effort effort) {
    KilnProgram program = found.program(turn.index());
    List<Offered> offers = offers(found, turn);
    Map<UnitKind, List<Offered>> byKind = new TreeMap<>(Comparator.comparingInt(UnitKind::index));
    for (Offered offer : offers) {
      byKind.computeIfAbsent(unit(offer.share()), any -> new ArrayList<>()).add(offer);
    }
    Urgency urgency = new Urgency(found, turn);
    List<Asked> asked = effort.freely() ? askedFreely(byKind, program, urgency) : asked(byKind);
    Optional<LoadAnswer> answer =
        asked.isEmpty() ? Optional.empty() : loads.load(program, asked, effort.loadSteps());
    List<Offered> in = new ArrayList<>();
    answer.ifPresent(
        load -> byKind.forEach((kind, list) -> in.addAll(list.subList(0, load.count(kind)))));
    learn(program, in, answer, byKind);
    Map<Chunk, List<Integer>> taken = new HashMap<>();
    in.forEach(
        o -> taken.computeIfAbsent(o.share().chunk(), any -> new ArrayList<>()).add(o.number()));
    boolean asThought =
        offers.stream().filter(Offered::must).count() == in.stream().filter(Offered::must).count();
    Optional<RealFiring> firing =
        in.isEmpty()
            ? held.map(HeldTurn::leftEmpty)
            : Optional.of(firing(found, turn, held, answer.orElseThrow(), in));
    return new Made(program.program().kind(), firing, taken, asThought);
  }

  private static List<Asked> asked(Map<UnitKind, List<Offered>> byKind) {
    List<Asked> asked = new ArrayList<>();
    byKind.forEach(
        (kind, list) -> {
          int must = (int) list.stream().filter(Offered::must).count();
          asked.add(new Asked(kind, must, 0, list.size() - must, 1));
        });
    return asked;
  }

  /** What need not go in now counts by its room, so that a load is full rather than of many. */
  private List<Asked> askedFreely(
      Map<UnitKind, List<Offered>> byKind, KilnProgram program, Urgency urgency) {
    int kiln = program.kiln();
    int least = room.least(byKind.keySet(), kiln);
    List<Asked> asked = new ArrayList<>();
    byKind.forEach(
        (kind, list) -> {
          int given = (int) list.stream().filter(Offered::must).count();
          int must =
              (int) list.stream().filter(o -> o.must() && urgency.isUrgent(o.share())).count();
          // Where all must go in, a weight says nothing but would make it another question.
          int weight = must == list.size() ? 1 : room.weight(kind, kiln, least, 1);
          asked.add(new Asked(kind, must, given - must, list.size() - given, weight));
        });
    return asked;
  }

  private static UnitKind unit(Share share) {
    return share.chunk().lot().kind(share.kind()).orElseThrow();
  }

  private RealFiring firing(
      Reckoning found, Turn turn, Optional<HeldTurn> held, LoadAnswer answer, List<Offered> in) {
    KilnProgram program = found.program(turn.index());
    Turnaround times = found.times(turn.index());
    UnitsByLot units = new UnitsByLot();
    in.forEach(offer -> units.add(offer.share().chunk().lot(), List.of(offer.number())));
    List<Going> going = units.going();
    Load load = new LoadNaming(ground.request(), program, going).named(answer, times);
    return new RealFiring(program, times, going, Optional.of(load), held.map(HeldTurn::firing));
  }

  private void learn(
      KilnProgram program,
      List<Offered> in,
      Optional<LoadAnswer> answer,
      Map<UnitKind, List<Offered>> byKind) {
    answer.ifPresent(found -> found.refused().forEach(kind -> room.refuse(program, kind)));
    if (in.isEmpty()) {
      // What does not go into an empty kiln never will.
      byKind.keySet().forEach(kind -> room.refuse(program, kind));
      return;
    }
    Map<UnitKind, Integer> placed = new HashMap<>();
    in.forEach(offer -> placed.merge(unit(offer.share()), 1, Integer::sum));
    long offered =
        byKind.entrySet().stream()
            .mapToLong(e -> (long) e.getValue().size() * room.usage(e.getKey(), program.kiln()))
            .sum();
    room.learn(program, offered, placed, answer.orElseThrow().leftForRoom());
  }

  private List<Offered> offers(Reckoning found, Turn turn) {
    KilnProgram program = found.program(turn.index());
    long room = Math.round(OFFER * found.board().goesIn().get(program.index()));
    List<Offered> offers = new ArrayList<>();
    long used = 0;
    long marks = 0;
    long foes = 0;
    TreeSet<Integer> orders = new TreeSet<>();
    for (Share share : given(found, turn)) {
      share.chunk().numbers().forEach(n -> offers.add(new Offered(share, n, true)));
      used += share.usage(program.kiln());
      marks |= share.marks();
      foes |= share.foes();
      orders.add(share.order());
    }
    for (Share share : others(found, turn)) {
      boolean apart = ((marks | share.marks()) & (foes | share.foes())) != 0;
      if (!apart && (share.order() < 0 || orders.contains(share.order()))) {
        long each = Math.max(1, share.usage(program.kiln()) / share.chunk().numbers().size());
        for (int number : share.chunk().numbers()) {
          if (used == 0 || used + each <= room) {
            offers.add(new Offered(share, number, false));
            used += each;
            marks |= share.marks();
            foes |= share.foes();
          }
        }
      }
    }
    return offers;
  }

  /** What was given to the turn, what is wanted first before the rest. */
  private static List<Share> given(Reckoning found, Turn turn) {
    return Arrays.stream(found.sharesOf(turn.index()))
        .mapToObj(found.board().shares()::get)
        .filter(found::goes)
        .sorted(Share.BY_WANTED)
        .toList();
  }

  /** What is ready and meant for later, the soonest first. */
  private static List<Share> others(Reckoning found, Turn turn) {
    KilnProgram program = found.program(turn.index());
    long loads = found.times(turn.index()).loads();
    return found.board().shares().stream()
        .filter(share -> found.turnOf(share) != turn.index() || !found.goes(share))
        .filter(share -> share.fits(program) && share.before() < 0)
        .filter(share -> share.chunk().ready() <= loads)
        .sorted(
            Comparator.comparingLong((Share share) -> later(found, share))
                .thenComparingInt(Share::index))
        .toList();
  }

  private static long later(Reckoning found, Share share) {
    return found.goes(share) ? found.times(found.turnOf(share)).loads() : Long.MAX_VALUE;
  }
}
