package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** What OptaPlanner works on: which share goes into which turn, and what each turn fires. */
@PlanningSolution
public final class WeekSketch {
  @ProblemFactProperty private Board board;
  @PlanningEntityCollectionProperty private List<ShareChoice> shares;
  @PlanningEntityCollectionProperty private List<TurnChoice> turns;

  @ProblemFactCollectionProperty
  @ValueRangeProvider(id = "turns")
  private List<Turn> turnRange;

  @ProblemFactCollectionProperty
  @ValueRangeProvider(id = "programs")
  private List<KilnProgram> programRange;

  @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = WeekLevels.COUNT)
  private BendableLongScore score;

  /** For OptaPlanner's copies. */
  WeekSketch() {}

  WeekSketch(Board board, List<ShareChoice> shares, List<TurnChoice> turns) {
    this.board = board;
    this.shares = shares;
    this.turns = turns;
    this.turnRange = board.turns();
    this.programRange = board.programs();
  }

  /**
   * A sketch of an assignment; held turns fire what is held.
   *
   * @param turnOf turn of each share, −1 for none
   * @param programOf program of each turn, null for none
   */
  static WeekSketch of(Board board, int[] turnOf, KilnProgram[] programOf) {
    List<ShareChoice> shares = new ArrayList<>();
    for (Share share : board.shares()) {
      ShareChoice choice = new ShareChoice(share);
      int turn = turnOf[share.index()];
      choice.decide(turn < 0 ? null : board.turns().get(turn));
      shares.add(choice);
    }
    List<TurnChoice> turns = new ArrayList<>();
    for (Turn turn : board.turns()) {
      KilnProgram program =
          board.isHeld(turn) ? board.held(turn).program() : programOf[turn.index()];
      turns.add(new TurnChoice(turn, program));
    }
    return new WeekSketch(board, shares, turns);
  }

  Board board() {
    return board;
  }

  List<ShareChoice> shares() {
    return shares;
  }

  List<TurnChoice> turns() {
    return turns;
  }

  /** What becomes of it. */
  Reckoning reckoning() {
    return new Reckoning(board, turnOf(), programs());
  }

  /** The turn of each share, −1 for none. */
  int[] turnOf() {
    int[] turnOf = new int[shares.size()];
    for (ShareChoice share : shares) {
      turnOf[share.getId()] = share.turn() == null ? -1 : share.turn().index();
    }
    return turnOf;
  }

  /** What each turn fires, null for nothing. */
  KilnProgram[] programs() {
    KilnProgram[] programOf = new KilnProgram[turns.size()];
    turns.forEach(turn -> programOf[turn.getId()] = turn.program());
    return programOf;
  }
}
