package shelfful.planning;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/**
 * The genuine decision: which shelf a piece stands on, or none. A planning entity; it never leaves
 * this package.
 */
@PlanningEntity
class PieceChoice {
  private int number;
  private Lot lot;

  @PlanningVariable(nullable = true)
  private LayerSlot slot;

  /** For OptaPlanner's copies. */
  PieceChoice() {}

  PieceChoice(int number, Lot lot) {
    this.number = number;
    this.lot = lot;
  }

  @PlanningId
  int number() {
    return number;
  }

  Lot lot() {
    return lot;
  }

  LayerSlot getSlot() {
    return slot;
  }

  void setSlot(LayerSlot slot) {
    this.slot = slot;
  }

  boolean isIn() {
    return slot != null;
  }

  @Override
  public String toString() {
    return lot.pieces().get(0).batch().id() + "#" + number + "->" + slot;
  }
}
