package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.ware.FiringKind;

/**
 * Whole firings elsewhere: one goes to another time or into another kiln, or two of a kind become
 * one. Piece by piece a search does not get there, for on the way there are firings too many.
 */
final class Regrouping {
  /** Of 100, how often two firings become one. */
  private static final int JOINED = 75;

  /**
   * Of 100, how often all ware is then given out anew; otherwise only what has no room moves on.
   */
  private static final int ANEW = 60;

  private final WeekSketch sketch;
  private final Board board;
  private final Random random;
  private final Reckoning now;

  Regrouping(WeekSketch sketch, Random random) {
    this.sketch = sketch;
    this.board = sketch.board();
    this.random = random;
    this.now = sketch.reckoning();
  }

  /** Empty when nothing is fired, or the kiln that was drawn has no turn left. */
  Optional<SketchMove> move() {
    List<Turn> fired =
        board.turns().stream()
            .filter(turn -> !board.isHeld(turn) && now.times(turn.index()) != null)
            .toList();
    if (fired.isEmpty()) {
      return Optional.empty();
    }
    Turn one = any(fired);
    Lineup lineup = new Lineup(sketch);
    List<Integer> shares = lineup.takeOut(one);
    Turn when = one;
    List<Turn> alike =
        fired.stream().filter(turn -> turn != one && kind(turn) == kind(one)).toList();
    if (!alike.isEmpty() && random.nextInt(100) < JOINED) {
      Turn other = any(alike);
      shares.addAll(lineup.takeOut(other));
      when = random.nextBoolean() ? one : other;
    }
    KilnProgram program =
        any(board.programs().stream().filter(may -> kind(may) == kind(one)).toList());
    if (!lineup.putIn(program, place(program, when), shares)) {
      return Optional.empty();
    }
    if (random.nextInt(100) < ANEW) {
      lineup.giveOutAnew();
    } else {
      lineup.mend();
    }
    return Optional.of(lineup.change());
  }

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private FiringKind kind(Turn turn) {
    return kind(now.program(turn.index()));
  }

  private static FiringKind kind(KilnProgram program) {
    return program.program().kind();
  }

  /** After all firings of the kiln that are loaded before a turn, give or take one. */
  private int place(KilnProgram program, Turn when) {
    long loads = now.times(when.index()).loads();
    int place = 0;
    for (Turn turn : board.turns()) {
      Turnaround times = now.times(turn.index());
      boolean earlier = times != null && times.loads() < loads;
      if (earlier && !board.isHeld(turn) && turn.kiln() == program.kiln()) {
        place = turn.order() + 1;
      }
    }
    return place + random.nextInt(3) - 1;
  }
}
