package shelfful.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.ware.FiringKind;
import shelfful.week.Hold;

/**
 * Cuts the lots into chunks at the start of a plan: units of one chunk have come equally far, and
 * went the same way in the plan before and in the plan that is to be bettered.
 */
final class ChunkMaker {
  /** A chunk is at most this share of a kilnful, so that firings can be filled evenly. */
  private static final double SHARE = 0.12;

  private final Ground ground;
  private final RoomBook room;
  private final List<RealFiring> frozen;
  private final Map<Unit, Hint> hints = new HashMap<>();
  private final boolean single;

  private record Unit(int lot, int number, FiringKind kind) {}

  private record State(Chunk like, Share.KilnDay earlierBisque, Share.KilnDay earlierGlaze) {}

  /**
   * A maker.
   *
   * @param frozen firings that stay as they are
   * @param before firings of a plan to start from, with their places
   */
  ChunkMaker(Ground ground, RoomBook room, List<RealFiring> frozen, Map<RealFiring, Hint> before) {
    this.ground = ground;
    this.room = room;
    this.frozen = frozen;
    before.forEach(
        (firing, hint) ->
            firing
                .going()
                .forEach(going -> going.numbers().forEach(n -> put(firing, going, n, hint))));
    this.single = ground.isSmall();
  }

  private void put(RealFiring firing, RealFiring.Going going, int number, Hint hint) {
    hints.put(new Unit(going.lot().index(), number, firing.program().program().kind()), hint);
  }

  List<Chunk> chunks() {
    List<Chunk> chunks = new ArrayList<>();
    for (Lot lot : ground.lots()) {
      Map<State, List<Integer>> states = new LinkedHashMap<>();
      for (int number : lot.numbers()) {
        states.computeIfAbsent(state(lot, number), any -> new ArrayList<>()).add(number);
      }
      states.forEach(
          (state, numbers) -> {
            if (!state.like().isDone()) {
              cut(state.like(), numbers, chunks);
            }
          });
    }
    return chunks;
  }

  private State state(Lot lot, int number) {
    boolean bisque = lot.bisque().isPresent();
    boolean glaze = lot.glaze().isPresent();
    long ready = bisque ? lot.bisqueReady() : lot.glazeReady();
    long deadline = -1;
    for (RealFiring firing : frozen) {
      if (holds(firing, lot, number)) {
        if (firing.program().program().kind() == FiringKind.BISQUE) {
          bisque = false;
          ready = Math.max(firing.times().unpacked() + ground.glazing(), lot.glazeReady());
        } else {
          glaze = false;
          deadline = firing.times().loads();
        }
      }
    }
    Chunk like =
        new Chunk(
            lot,
            List.of(),
            bisque,
            glaze,
            ready,
            bisque && !glaze ? deadline : -1,
            hint(lot, number, FiringKind.BISQUE),
            hint(lot, number, FiringKind.GLAZE));
    return new State(
        like,
        ground.earlier(lot, number, FiringKind.BISQUE),
        ground.earlier(lot, number, FiringKind.GLAZE));
  }

  private static boolean holds(RealFiring firing, Lot lot, int number) {
    return firing.held().filter(held -> held.hold() == Hold.ALL).isPresent()
        && firing.going().stream()
            .anyMatch(going -> going.lot() == lot && going.numbers().contains(number));
  }

  private Optional<Hint> hint(Lot lot, int number, FiringKind kind) {
    return Optional.ofNullable(hints.get(new Unit(lot.index(), number, kind)));
  }

  private void cut(Chunk like, List<Integer> numbers, List<Chunk> chunks) {
    int size = single ? 1 : size(like.lot());
    for (int from = 0; from < numbers.size(); from += size) {
      chunks.add(like.of(numbers.subList(from, Math.min(numbers.size(), from + size))));
    }
  }

  private int size(Lot lot) {
    int size = Integer.MAX_VALUE;
    for (FiringKind kind : FiringKind.values()) {
      for (int kiln = 0; kiln < ground.request().kilns().size(); kiln++) {
        if (lot.kind(kind).isPresent()) {
          double most = SHARE * room.goesIn(kiln, kind);
          size = Math.min(size, (int) (most / room.usage(lot.kind(kind).get(), kiln)));
        }
      }
    }
    return Math.max(1, size);
  }
}
