package shelfful.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.schedule.SketchMove.ShareChange;

/**
 * Something that is late or waits goes into an earlier turn; where there is no room, what is wanted
 * last goes out of it, into the turn the other came from or one that has room.
 */
final class Hurry {
  private static final int TRIES = 12;

  private final WeekSketch sketch;
  private final Board board;
  private final Random random;
  private final Reckoning now;
  private final long[] used;

  Hurry(WeekSketch sketch, Random random) {
    this.sketch = sketch;
    this.board = sketch.board();
    this.random = random;
    this.now = sketch.reckoning();
    this.used = new long[board.turns().size()];
    for (Share share : board.shares()) {
      if (now.goes(share)) {
        int turn = now.turnOf(share);
        used[turn] += share.usage(now.program(turn).kiln());
      }
    }
  }

  Optional<SketchMove> move() {
    for (int i = 0; i < TRIES; i++) {
      ShareChoice share = sketch.shares().get(random.nextInt(sketch.shares().size()));
      if (isLateOrWaits(share.share())) {
        List<Turn> earlier = earlier(share.share());
        if (!earlier.isEmpty()) {
          Turn to = earlier.get(random.nextInt(earlier.size()));
          return Optional.of(into(share, to));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isLateOrWaits(Share share) {
    if (!now.goes(share)) {
      return true;
    }
    return board.clock().day(now.times(now.turnOf(share)).unpacked()) > share.wanted();
  }

  private List<Turn> earlier(Share share) {
    long latest = now.goes(share) ? now.times(now.turnOf(share)).unpacked() : Long.MAX_VALUE;
    long ready = ready(share);
    List<Turn> turns = new ArrayList<>();
    for (Turn turn : board.turns()) {
      Turnaround times = now.times(turn.index());
      boolean earlier = times != null && times.unpacked() < latest && times.loads() >= ready;
      if (earlier && ready >= 0 && share.fits(now.program(turn.index()))) {
        turns.add(turn);
      }
    }
    return turns;
  }

  /** When it can go in as things are; −1 when it never can. */
  private long ready(Share share) {
    if (share.before() < 0) {
      return share.chunk().ready();
    }
    Share before = board.shares().get(share.before());
    return now.goes(before) ? now.times(now.turnOf(before)).unpacked() + board.glazing() : -1;
  }

  private SketchMove into(ShareChoice share, Turn to) {
    KilnProgram program = now.program(to.index());
    List<ShareChange> changes = new ArrayList<>();
    changes.add(new ShareChange(share, to));
    int from = now.goes(share.share()) ? now.turnOf(share.share()) : -1;
    if (from >= 0) {
      used[from] -= share.share().usage(now.program(from).kiln());
    }
    used[to.index()] += share.share().usage(program.kiln());
    List<ShareChoice> out =
        sketch.shares().stream()
            .filter(one -> one.turn() == to && now.goes(one.share()))
            .sorted(
                Comparator.comparingLong((ShareChoice one) -> -one.share().wanted())
                    .thenComparingInt(ShareChoice::getId))
            .toList();
    for (ShareChoice one : out) {
      boolean tooFull = used[to.index()] > board.goesIn().get(program.index());
      if (tooFull && one != share) {
        used[to.index()] -= one.share().usage(program.kiln());
        changes.add(new ShareChange(one, elsewhere(one.share(), to, from)));
      }
    }
    return new SketchMove(changes, List.of());
  }

  private Turn elsewhere(Share share, Turn not, int first) {
    if (first >= 0 && hasRoom(share, first)) {
      used[first] += share.usage(now.program(first).kiln());
      return board.turns().get(first);
    }
    for (Turn turn : board.turns()) {
      if (turn != not && now.times(turn.index()) != null && hasRoom(share, turn.index())) {
        used[turn.index()] += share.usage(turn.kiln());
        return turn;
      }
    }
    return null;
  }

  private boolean hasRoom(Share share, int turn) {
    KilnProgram program = now.program(turn);
    long least = now.times(turn).loads();
    long ready = ready(share);
    return share.fits(program)
        && ready >= 0
        && ready <= least
        && used[turn] + share.usage(program.kiln()) <= board.goesIn().get(program.index());
  }
}
