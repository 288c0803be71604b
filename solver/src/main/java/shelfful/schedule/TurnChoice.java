package shelfful.schedule;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** The decision what a turn of a kiln fires. */
@PlanningEntity
public final class TurnChoice {
  private Turn turn;

  @PlanningVariable(valueRangeProviderRefs = "programs", nullable = true)
  private KilnProgram program;

  /** For OptaPlanner's copies. */
  TurnChoice() {}

  TurnChoice(Turn turn, KilnProgram program) {
    this.turn = turn;
    this.program = program;
  }

  /** Tells the decisions apart. */
  @PlanningId
  public int getId() {
    return turn.index();
  }

  Turn turn() {
    return turn;
  }

  /** The program, or null when the turn is not fired. */
  KilnProgram program() {
    return program;
  }

  void decide(KilnProgram other) {
    program = other;
  }
}
