package shelfful.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.ware.FiringKind;
import shelfful.week.Span;

/**
 * Makes a week real: searches an assignment, really plans the load that is fired first, and goes on
 * with what is left, until nothing more can be fired.
 */
final class Rollout {
  private final Ground ground;
  private final RoomBook room;
  private final WeekSearch search;
  private final FiringMaker maker;
  private final BooleanSupplier stop;
  private final List<RealFiring> firings = new ArrayList<>();
  private final List<List<Span>> busy = new ArrayList<>();
  private final List<HeldTurn> held;
  private final Reshuffling reshuffling;
  private final Remainder remainder;
  private List<Chunk> open = List.of();
  private Optional<Against> against = Optional.empty();

  /**
   * How hard to look.
   *
   * @param first evaluations of the first search
   * @param again evaluations after each firing that went differently than thought
   * @param loadSteps of each load
   * @param stretch percent by which the search may trust that more goes in than has gone in so far:
   *     what is never tried is never found to fit
   * @param freely whether only what would else be late must go into a load, and the rest goes in by
   *     the room it takes: so more goes in
   * @param seed of the searches
   */
  record Effort(int first, int again, int loadSteps, int stretch, boolean freely, long seed) {}

  Rollout(
      Ground ground,
      RoomBook room,
      LoadBook loads,
      WeekSearch search,
      Held heldFirings,
      BooleanSupplier stop) {
    this.ground = ground;
    this.room = room;
    this.search = search;
    this.maker = new FiringMaker(ground, room, loads);
    this.reshuffling = new Reshuffling(ground, room, loads, stop);
    this.remainder = new Remainder(ground, room);
    this.stop = stop;
    this.held = new ArrayList<>(heldFirings.turns());
    ground.request().kilns().forEach(kiln -> busy.add(new ArrayList<>()));
    heldFirings.frozen().forEach(this::keep);
    for (HeldTurn turn : held) {
      busy.get(turn.program().kiln()).add(turn.firing().times().busy());
    }
  }

  /** A week made real. */
  record Rolled(List<RealFiring> firings, List<Chunk> open, boolean complete) {
    Rolled {
      firings = List.copyOf(firings);
      open = List.copyOf(open);
    }
  }

  /**
   * What a round is held against.
   *
   * @param prospect what can hardly be better than the best week so far is broken off
   * @param confidence but before that, more is trusted to go in
   */
  record Against(Prospect prospect, Confidence confidence) {}

  /** Holds this against the best week so far. */
  Rollout against(Against best) {
    against = Optional.of(best);
    return this;
  }

  /**
   * Rolls out.
   *
   * @param before the week to better, or empty
   */
  Rolled run(List<RealFiring> before, Effort effort) {
    Map<RealFiring, Hint> hints = hints(before);
    open = new ChunkMaker(ground, room, List.copyOf(firings), hints).chunks();
    Sketching sketching = new Sketching(programs(hints));
    int stretch = against.map(a -> a.confidence().first(effort.stretch())).orElse(effort.stretch());
    int evaluations = effort.first();
    boolean fresh = before.isEmpty();
    boolean hopeless = false;
    while (!open.isEmpty() && !stop.getAsBoolean()) {
      Reckoning found = search(sketching, stretch, fresh, evaluations, effort.seed());
      hopeless = isHopeless(found);
      if (hopeless && against.isPresent()) {
        if (reshuffling.isLittle(firings, open) && !against.get().prospect().hasTooMany(firings)) {
          return settled(effort);
        }
        int more = more(stretch);
        while (hopeless && more > stretch && !stop.getAsBoolean()) {
          stretch = more;
          int again = firings.isEmpty() ? effort.first() : effort.again();
          found = search(sketching, stretch, fresh, again, effort.seed() + stretch);
          hopeless = isHopeless(found);
          more = more(stretch);
        }
      }
      if (!hopeless && firings.isEmpty()) {
        int enough = stretch;
        against.ifPresent(a -> a.confidence().sufficed(enough));
      }
      Optional<Turn> next = next(found);
      if (next.isEmpty() || hopeless || stop.getAsBoolean()) {
        break;
      }
      boolean asThought = fire(found, next.get(), sketching, effort);
      evaluations = asThought ? 0 : effort.again();
      fresh = false;
    }
    double left = remainder.kilnfuls(open);
    if (against.isPresent() && left > 0 && left < 1) {
      room.wanted().leftOver(remainder.shares(open));
    }
    return rolled(!hopeless && !stop.getAsBoolean());
  }

  private int more(int stretch) {
    return against.orElseThrow().confidence().more(stretch, firings.size());
  }

  private Reckoning search(
      Sketching sketching, int stretch, boolean fresh, int evaluations, long seed) {
    Board board = new BoardMaker(ground, room, stretch).board(open, busy, held);
    WeekSketch start = fresh ? Opening.sketch(board) : sketching.sketch(board);
    return search.run(start, evaluations, seed).reckoning();
  }

  private Rolled rolled(boolean complete) {
    held.forEach(turn -> firings.add(turn.leftEmpty()));
    return new Rolled(firings, open, complete);
  }

  /** With room found for what is left, or hopeless all the same. */
  private Rolled settled(Effort effort) {
    room.wanted().leftOver(remainder.shares(open));
    Optional<Rolled> settled = reshuffling.settle(firings, open, effort.loadSteps(), effort.seed());
    if (settled.isPresent()) {
      firings.clear();
      firings.addAll(settled.get().firings());
      open = settled.get().open();
    }
    return rolled(settled.isPresent());
  }

  private boolean isHopeless(Reckoning found) {
    return against.filter(best -> best.prospect().isHopeless(firings, found)).isPresent();
  }

  /** The one that is loaded first. */
  private static Optional<Turn> next(Reckoning found) {
    return found.board().turns().stream()
        .filter(turn -> found.times(turn.index()) != null)
        .min(
            Comparator.comparingLong((Turn turn) -> found.times(turn.index()).loads())
                .thenComparingInt(Turn::index));
  }

  /** Fires a turn; says whether all that was given to it went in. */
  private boolean fire(Reckoning found, Turn turn, Sketching sketching, Effort effort) {
    Optional<HeldTurn> heldTurn =
        found.board().isHeld(turn) ? Optional.of(found.board().held(turn)) : Optional.empty();
    FiringMaker.Made made = maker.make(found, turn, heldTurn, effort);
    Map<Chunk, FiringMaker.Hints> hints = sketching.carry(found, turn);
    open = advanced(made, hints);
    heldTurn.ifPresent(held::remove);
    if (made.firing().isPresent()) {
      if (heldTurn.isEmpty()) {
        keep(made.firing().get());
        reshuffling.holds(made.firing().get(), ware(made));
      } else {
        firings.add(made.firing().get());
      }
    }
    return made.asThought();
  }

  private static List<Chunk> ware(FiringMaker.Made made) {
    return made.taken().entrySet().stream().map(one -> one.getKey().of(one.getValue())).toList();
  }

  private List<Chunk> advanced(FiringMaker.Made made, Map<Chunk, FiringMaker.Hints> hints) {
    List<Chunk> next = new ArrayList<>();
    for (Chunk chunk : open) {
      FiringMaker.Hints to = hints.getOrDefault(chunk, FiringMaker.Hints.NONE);
      Chunk hinted = chunk.hinted(to.bisque(), to.glaze());
      List<Integer> gone = made.taken().getOrDefault(chunk, List.of());
      List<Integer> left =
          chunk.numbers().stream().filter(number -> !gone.contains(number)).toList();
      if (!gone.isEmpty() && made.kind() == FiringKind.BISQUE && chunk.glaze()) {
        long ready = made.firing().orElseThrow().times().unpacked() + ground.glazing();
        next.add(hinted.of(gone).bisqued(ready));
      }
      if (!left.isEmpty()) {
        next.add(hinted.of(left));
      }
    }
    return next;
  }

  private void keep(RealFiring firing) {
    firings.add(firing);
    busy.get(firing.program().kiln())
        .add(
            new Span(
                ground.clock().time(firing.times().loads()),
                ground.clock().time(firing.times().unpacked())));
  }

  private Map<RealFiring, Hint> hints(List<RealFiring> before) {
    Map<RealFiring, Hint> hints = new IdentityHashMap<>();
    int[] order = new int[busy.size()];
    before.stream()
        .filter(firing -> firing.held().isEmpty())
        .sorted(Comparator.comparingLong(firing -> firing.times().loads()))
        .forEach(
            firing -> {
              int kiln = firing.program().kiln();
              hints.put(firing, new Hint(kiln, order[kiln]++));
            });
    for (RealFiring firing : before) {
      for (int i = 0; i < held.size(); i++) {
        if (firing.held().equals(Optional.of(held.get(i).firing()))) {
          hints.put(firing, new Hint(busy.size() + i, 0));
        }
      }
    }
    return hints;
  }

  private static Map<Hint, KilnProgram> programs(Map<RealFiring, Hint> hints) {
    Map<Hint, KilnProgram> programs = new HashMap<>();
    hints.forEach((firing, hint) -> programs.put(hint, firing.program()));
    return programs;
  }
}
