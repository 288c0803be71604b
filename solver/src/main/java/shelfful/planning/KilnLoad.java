package shelfful.planning;

import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** What OptaPlanner works on: every ready piece with its choice. It never leaves this package. */
@PlanningSolution
class KilnLoad {
  @PlanningEntityCollectionProperty private List<PieceChoice> pieces;

  @ValueRangeProvider private List<LayerSlot> slots;

  @ProblemFactProperty private Rulebook rulebook;

  @PlanningScore(
      bendableHardLevelsSize = LoadConstraintProvider.HARD_LEVELS,
      bendableSoftLevelsSize = LoadConstraintProvider.SOFT_LEVELS)
  private BendableLongScore score;

  /** For OptaPlanner's copies. */
  KilnLoad() {}

  KilnLoad(List<PieceChoice> pieces, List<LayerSlot> slots, Rulebook rulebook) {
    this.pieces = pieces;
    this.slots = slots;
    this.rulebook = rulebook;
  }

  List<PieceChoice> pieces() {
    return pieces;
  }

  List<LayerSlot> slots() {
    return slots;
  }

  Rulebook rulebook() {
    return rulebook;
  }

  BendableLongScore getScore() {
    return score;
  }

  void setScore(BendableLongScore score) {
    this.score = score;
  }
}
