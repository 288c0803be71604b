package shelfful.planning;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Hands OptaPlanner one proposal after another, each worked out from the load as it stands. */
public final class RebuildMoveFactory implements MoveIteratorFactory<KilnLoad, RebuildMove> {
  /** After so many proposals in a row that change nothing, there is nothing left to search. */
  private static final int TRIES = 200;

  @Override
  public long getSize(ScoreDirector<KilnLoad> director) {
    return Integer.MAX_VALUE;
  }

  @Override
  public Iterator<RebuildMove> createOriginalMoveIterator(ScoreDirector<KilnLoad> director) {
    throw new UnsupportedOperationException(
        "Rebuild moves are drawn at random; use random selection");
  }

  @Override
  public Iterator<RebuildMove> createRandomMoveIterator(
      ScoreDirector<KilnLoad> director, Random random) {
    return new Iterator<>() {
      private RebuildMove drawn;

      /** False ends the search: steps that change nothing would never be counted as steps. */
      @Override
      public boolean hasNext() {
        if (drawn == null) {
          drawn = draw(director.getWorkingSolution(), random);
        }
        return drawn != null;
      }

      @Override
      public RebuildMove next() {
        if (!hasNext()) {
          throw new NoSuchElementException("no proposal changes the load");
        }
        RebuildMove next = drawn;
        drawn = null;
        return next;
      }
    };
  }

  /** A proposal that changes something, or null. */
  private static RebuildMove draw(KilnLoad load, Random random) {
    Workbench bench = load.rulebook().bench();
    SlotCounts counts = SlotCounts.of(load.pieces());
    SketchJudge judge = load.rulebook().judge();
    Sketch now = counts.sketch(judge.stand(), judge.ware().lots(), judge.staying().levels());
    for (int i = 0; i < TRIES && !bench.isTimeUp(); i++) {
      Sketch proposed = bench.rebuilder().propose(now, random);
      if (proposed != null && bench.hasRoomFor(proposed)) {
        List<RebuildMove.Change> changes = bench.slots().changes(load.pieces(), proposed);
        if (!changes.isEmpty()) {
          return new RebuildMove(changes);
        }
      }
    }
    return null;
  }
}
