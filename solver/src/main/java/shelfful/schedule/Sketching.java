package shelfful.schedule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import shelfful.ware.FiringKind;

/** Carries a sketch over from one search to the next, when the firing in front has been fired. */
final class Sketching {
  private Map<Hint, KilnProgram> programs;

  /** Begins with the programs of a week before, by turn. */
  Sketching(Map<Hint, KilnProgram> programs) {
    this.programs = Map.copyOf(programs);
  }

  /**
   * The best of three sketches: the one that the hints of the chunks tell of, set right where there
   * is less room than was thought; one with the same programs and everything given out anew; and
   * one that owes nothing to what was before.
   */
  WeekSketch sketch(Board board) {
    KilnProgram[] programOf = new KilnProgram[board.turns().size()];
    Map<Hint, Turn> byHint = new HashMap<>();
    for (Turn turn : board.turns()) {
      programOf[turn.index()] = programs.get(turn.hint());
      byHint.put(turn.hint(), turn);
    }
    int[] turnOf = new int[board.shares().size()];
    for (Share share : board.shares()) {
      turnOf[share.index()] = hint(share).map(byHint::get).map(Turn::index).orElse(-1);
    }
    WeekSketch hinted = new RoomRepair(board, turnOf, programOf).sketch();
    WeekSketch anew = WeekSketch.of(board, Opening.turnsFor(board, programOf), programOf);
    WeekSketch open = Opening.sketch(board);
    return best(List.of(hinted, anew, open));
  }

  private static WeekSketch best(List<WeekSketch> sketches) {
    WeekSketch best = sketches.get(0);
    BendableLongScore most = WeekScorer.score(best.reckoning());
    for (WeekSketch sketch : sketches.subList(1, sketches.size())) {
      BendableLongScore score = WeekScorer.score(sketch.reckoning());
      if (score.compareTo(most) > 0) {
        best = sketch;
        most = score;
      }
    }
    return best;
  }

  private static Optional<Hint> hint(Share share) {
    return share.kind() == FiringKind.BISQUE
        ? share.chunk().bisqueHint()
        : share.chunk().glazeHint();
  }

  /** Hints for every chunk once a turn is over: turns after it in its track move up. */
  Map<Chunk, FiringMaker.Hints> carry(Reckoning found, Turn done) {
    Map<Hint, KilnProgram> next = new HashMap<>();
    for (Turn turn : found.board().turns()) {
      KilnProgram program = found.program(turn.index());
      if (program != null) {
        moved(turn, done, found.board()).ifPresent(hint -> next.put(hint, program));
      }
    }
    programs = next;
    Map<Chunk, FiringMaker.Hints> hints = new HashMap<>();
    for (Share share : found.board().shares()) {
      int turn = found.turnOf(share);
      Optional<Hint> hint =
          turn < 0 ? Optional.empty() : moved(found.board().turns().get(turn), done, found.board());
      FiringMaker.Hints before = hints.getOrDefault(share.chunk(), FiringMaker.Hints.NONE);
      hints.put(share.chunk(), before.with(share.kind(), hint));
    }
    return hints;
  }

  private static Optional<Hint> moved(Turn turn, Turn done, Board board) {
    if (turn.track() == done.track()) {
      return turn.order() <= done.order()
          ? Optional.empty()
          : Optional.of(new Hint(turn.track(), turn.order() - done.order() - 1));
    }
    boolean afterHeld = board.isHeld(done) && turn.track() > done.track();
    return Optional.of(new Hint(afterHeld ? turn.track() - 1 : turn.track(), turn.order()));
  }
}
