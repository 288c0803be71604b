package shelfful.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Sets an assignment right where there is less room than was thought: what is wanted last goes out
 * of a turn that is too full, and what has no turn goes into the first that has room for it.
 */
final class RoomRepair {
  private final Board board;
  private final int[] turnOf;
  private final KilnProgram[] programOf;
  private final Reckoning now;
  private final long[] used;

  /**
   * A repair.
   *
   * @param turnOf turn of each share, −1 for none
   * @param programOf program of each turn, null for none
   */
  RoomRepair(Board board, int[] turnOf, KilnProgram[] programOf) {
    this.board = board;
    this.turnOf = turnOf.clone();
    this.programOf = programOf.clone();
    for (Turn turn : board.turns()) {
      this.programOf[turn.index()] =
          board.isHeld(turn) ? board.held(turn).program() : programOf[turn.index()];
    }
    this.now = new Reckoning(board, this.turnOf, this.programOf);
    this.used = new long[programOf.length];
  }

  WeekSketch sketch() {
    return WeekSketch.of(board, turns(), programOf);
  }

  /** The turn of each share once all is set right, −1 for none. */
  int[] turns() {
    List<Share> homeless = new ArrayList<>();
    for (Share share : board.byWanted()) {
      int turn = turnOf[share.index()];
      if (turn >= 0 && now.goes(share) && hasRoom(share, turn)) {
        used[turn] += share.usage(programOf[turn].kiln());
      } else {
        turnOf[share.index()] = -1;
        homeless.add(share);
      }
    }
    List<Turn> inTime =
        board.turns().stream()
            .filter(turn -> now.times(turn.index()) != null)
            .sorted(Comparator.comparingLong((Turn turn) -> now.times(turn.index()).loads()))
            .toList();
    for (Share share : homeless) {
      for (Turn turn : inTime) {
        if (turnOf[share.index()] < 0 && isReady(share, turn) && hasRoom(share, turn.index())) {
          turnOf[share.index()] = turn.index();
          used[turn.index()] += share.usage(turn.kiln());
        }
      }
    }
    return turnOf;
  }

  private boolean hasRoom(Share share, int turn) {
    KilnProgram program = programOf[turn];
    return program != null
        && share.fits(program)
        && (used[turn] == 0
            || used[turn] + share.usage(program.kiln()) <= board.goesIn().get(program.index()));
  }

  private boolean isReady(Share share, Turn turn) {
    long loads = now.times(turn.index()).loads();
    if (share.before() < 0) {
      return share.chunk().ready() <= loads;
    }
    int bisque = turnOf[share.before()];
    Turnaround bisqued = bisque < 0 ? null : now.times(bisque);
    return bisqued != null && bisqued.unpacked() + board.glazing() <= loads;
  }
}
