package shelfful.schedule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Shares that change their turns and turns that change their programs, all at once. */
final class SketchMove extends AbstractMove<WeekSketch> {
  private final List<ShareChange> shares;
  private final List<TurnChange> turns;

  SketchMove(List<ShareChange> shares, List<TurnChange> turns) {
    this.shares = List.copyOf(shares);
    this.turns = List.copyOf(turns);
  }

  /** One share to a turn; null lets it wait. */
  record ShareChange(ShareChoice share, Turn to) {}

  /** One turn to a program; null lets it be skipped. */
  record TurnChange(TurnChoice turn, KilnProgram to) {}

  List<TurnChange> turns() {
    return turns;
  }

  @Override
  protected SketchMove createUndoMove(ScoreDirector<WeekSketch> director) {
    List<ShareChange> sharesBack = new ArrayList<>();
    shares.forEach(c -> sharesBack.add(new ShareChange(c.share(), c.share().turn())));
    List<TurnChange> turnsBack = new ArrayList<>();
    turns.forEach(c -> turnsBack.add(new TurnChange(c.turn(), c.turn().program())));
    return new SketchMove(sharesBack, turnsBack);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<WeekSketch> director) {
    for (ShareChange change : shares) {
      director.beforeVariableChanged(change.share(), "turn");
      change.share().decide(change.to());
      director.afterVariableChanged(change.share(), "turn");
    }
    for (TurnChange change : turns) {
      director.beforeVariableChanged(change.turn(), "program");
      change.turn().decide(change.to());
      director.afterVariableChanged(change.turn(), "program");
    }
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<WeekSketch> director) {
    return shares.stream().anyMatch(c -> c.to() != c.share().turn())
        || turns.stream().anyMatch(c -> c.to() != c.turn().program());
  }

  @Override
  public Collection<?> getPlanningEntities() {
    List<Object> entities = new ArrayList<>();
    shares.forEach(c -> entities.add(c.share()));
    turns.forEach(c -> entities.add(c.turn()));
    return entities;
  }

  @Override
  public Collection<?> getPlanningValues() {
    Set<Object> values = new LinkedHashSet<>();
    shares.forEach(c -> values.add(c.to()));
    turns.forEach(c -> values.add(c.to()));
    return values;
  }
}
