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
  private List<Chunk> open = List.of();
  private Optional<Prospect> prospect = Optional.empty();
  private Optional<Last> last = Optional.empty();

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
   * @param hardSteps of a load on which the number of firings hangs
   * @param seed of the searches
   */
  record Effort(
      int first, int again, int loadSteps, int stretch, boolean freely, int hardSteps, long seed) {
    Effort hard() {
      return new Effort(first, again, hardSteps, stretch, freely, hardSteps, seed);
    }
  }

  /** A firing that can be taken back, and what was open before it. */
  private record Last(Reckoning found, Turn turn, List<Chunk> open) {}

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

  /** Breaks off what can hardly be better than the best week so far. */
  Rollout against(Prospect best) {
    prospect = Optional.of(best);
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
    BoardMaker boards = new BoardMaker(ground, room, effort.stretch());
    int evaluations = effort.first();
    boolean fresh = before.isEmpty();
    boolean hopeless = false;
    while (!open.isEmpty() && !stop.getAsBoolean()) {
      Board board = boards.board(open, busy, held);
      WeekSketch start = fresh ? Opening.sketch(board) : sketching.sketch(board);
      Reckoning found = search.run(start, evaluations, effort.seed()).reckoning();
      hopeless = isHopeless(found);
      if (hopeless && evaluations < effort.first()) {
        // A short search may have missed what a longer one finds.
        found = search.run(start, effort.first(), effort.seed() + 1).reckoning();
        hopeless = isHopeless(found);
      }
      if (hopeless && mayFireAgain(effort)) {
        fireAgain(sketching, effort);
        hopeless = false;
        evaluations = effort.again();
        continue;
      }
      Optional<Turn> next = next(found);
      if (next.isEmpty() || hopeless || stop.getAsBoolean()) {
        break;
      }
      boolean asThought = fire(found, next.get(), sketching, effort);
      evaluations = asThought ? 0 : effort.again();
      fresh = false;
    }
    boolean complete = !hopeless && !stop.getAsBoolean();
    held.forEach(turn -> firings.add(turn.leftEmpty()));
    return new Rolled(firings, open, complete);
  }

  /** Late in a week a few pieces that did not go in are all that another firing is for. */
  private boolean mayFireAgain(Effort effort) {
    return last.isPresent()
        && effort.hardSteps() > effort.loadSteps()
        && prospect.filter(best -> best.isLate(firings)).isPresent();
  }

  /** Plans the load of the last firing again, with more steps. */
  private void fireAgain(Sketching sketching, Effort effort) {
    Last before = last.orElseThrow();
    RealFiring fired = firings.remove(firings.size() - 1);
    List<Span> spans = busy.get(fired.program().kiln());
    spans.remove(spans.size() - 1);
    open = before.open();
    fire(before.found(), before.turn(), sketching, effort.hard());
    last = Optional.empty();
  }

  private boolean isHopeless(Reckoning found) {
    return prospect.filter(best -> best.isHopeless(firings, found)).isPresent();
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
    last = Optional.empty();
    List<Chunk> before = open;
    FiringMaker.Made made = maker.make(found, turn, heldTurn, effort);
    Map<Chunk, FiringMaker.Hints> hints = sketching.carry(found, turn);
    open = advanced(made, hints);
    heldTurn.ifPresent(held::remove);
    if (made.firing().isPresent()) {
      if (heldTurn.isEmpty()) {
        keep(made.firing().get());
        last = Optional.of(new Last(found, turn, before));
      } else {
        firings.add(made.firing().get());
      }
    }
    return made.asThought();
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
