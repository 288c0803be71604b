package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import shelfful.schedule.SketchMove.ShareChange;
import shelfful.schedule.SketchMove.TurnChange;

/** The firings of a sketch while whole ones are taken out and put in; tells what came of it. */
final class Lineup {
  private final WeekSketch sketch;
  private final Board board;
  private final KilnProgram[] programOf;
  private int[] turnOf;

  Lineup(WeekSketch sketch) {
    this.sketch = sketch;
    this.board = sketch.board();
    this.programOf = sketch.programs();
    this.turnOf = sketch.turnOf();
  }

  /** Has a turn fire something else, or nothing; shares stay where they are. */
  void fire(TurnChange change) {
    programOf[change.turn().getId()] = change.to();
  }

  /** Takes a firing out; returns the shares that were in it. */
  List<Integer> takeOut(Turn turn) {
    List<Integer> shares = new ArrayList<>();
    for (int share = 0; share < turnOf.length; share++) {
      if (turnOf[share] == turn.index()) {
        shares.add(share);
        turnOf[share] = -1;
      }
    }
    programOf[turn.index()] = null;
    return shares;
  }

  /**
   * Puts a firing in; those from its place on to the next turn that fires nothing move on by one.
   *
   * @param place among the turns of its kiln, from 0; the last if there are not so many
   * @return false when every turn from there on fires something
   */
  boolean putIn(KilnProgram program, int place, List<Integer> shares) {
    List<Turn> turns =
        board.turns().stream()
            .filter(turn -> !board.isHeld(turn) && turn.kiln() == program.kiln())
            .toList();
    int at = Math.max(0, Math.min(turns.size() - 1, place));
    int idle = at;
    while (idle < turns.size() && programOf[turns.get(idle).index()] != null) {
      idle++;
    }
    if (idle == turns.size()) {
      return false;
    }
    for (int i = idle; i > at; i--) {
      moveOn(turns.get(i - 1).index(), turns.get(i).index());
    }
    int turn = turns.get(at).index();
    programOf[turn] = program;
    shares.forEach(share -> turnOf[share] = turn);
    return true;
  }

  private void moveOn(int from, int to) {
    programOf[to] = programOf[from];
    for (int share = 0; share < turnOf.length; share++) {
      turnOf[share] = turnOf[share] == from ? to : turnOf[share];
    }
  }

  /** What is too much for its firing goes into others. */
  void mend() {
    turnOf = new RoomRepair(board, turnOf, programOf).turns();
  }

  /** Everything is given out anew to the firings there are. */
  void giveOutAnew() {
    turnOf = Opening.turnsFor(board, programOf);
  }

  /** What must change for the sketch to be so. */
  SketchMove change() {
    List<ShareChange> shares = new ArrayList<>();
    for (ShareChoice share : sketch.shares()) {
      int turn = turnOf[share.getId()];
      Turn to = turn < 0 ? null : board.turns().get(turn);
      if (share.turn() != to) {
        shares.add(new ShareChange(share, to));
      }
    }
    List<TurnChange> turns = new ArrayList<>();
    for (TurnChoice turn : sketch.turns()) {
      KilnProgram to = programOf[turn.getId()];
      if (turn.program() != to) {
        turns.add(new TurnChange(turn, to));
      }
    }
    return new SketchMove(shares, turns);
  }
}
