package shelfful.planning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Many pieces changing their slots at once: what makes one sketch into another. */
final class RebuildMove extends AbstractMove<KilnLoad> {
  private final List<Change> changes;

  RebuildMove(List<Change> changes) {
    this.changes = List.copyOf(changes);
  }

  /** One piece to a slot; null takes it out. */
  record Change(PieceChoice piece, LayerSlot to) {}

  @Override
  protected RebuildMove createUndoMove(ScoreDirector<KilnLoad> director) {
    List<Change> back = new ArrayList<>();
    for (Change change : changes) {
      back.add(new Change(change.piece(), change.piece().getSlot()));
    }
    return new RebuildMove(back);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<KilnLoad> director) {
    for (Change change : changes) {
      director.beforeVariableChanged(change.piece(), "slot");
      change.piece().setSlot(change.to());
      director.afterVariableChanged(change.piece(), "slot");
    }
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<KilnLoad> director) {
    return !changes.isEmpty();
  }

  @Override
  public Collection<?> getPlanningEntities() {
    return changes.stream().map(Change::piece).toList();
  }

  @Override
  public Collection<?> getPlanningValues() {
    LinkedHashSet<LayerSlot> slots = new LinkedHashSet<>();
    changes.forEach(change -> slots.add(change.to()));
    return slots;
  }
}
