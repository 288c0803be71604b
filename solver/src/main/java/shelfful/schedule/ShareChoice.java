package shelfful.schedule;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** The decision into which turn a share goes. */
@PlanningEntity
public final class ShareChoice {
  private Share share;

  @PlanningVariable(valueRangeProviderRefs = "turns", nullable = true)
  private Turn turn;

  /** For OptaPlanner's copies. */
  ShareChoice() {}

  ShareChoice(Share share) {
    this.share = share;
  }

  /** Tells the decisions apart. */
  @PlanningId
  public int getId() {
    return share.index();
  }

  Share share() {
    return share;
  }

  /** The turn, or null when it waits. */
  Turn turn() {
    return turn;
  }

  void decide(Turn other) {
    turn = other;
  }
}
