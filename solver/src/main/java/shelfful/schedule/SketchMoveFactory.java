package shelfful.schedule;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Hands OptaPlanner one change after another, each drawn from the sketch as it stands. */
public final class SketchMoveFactory implements MoveIteratorFactory<WeekSketch, SketchMove> {
  /** After so many proposals in a row that change nothing, there is nothing left to search. */
  private static final int TRIES = 200;

  @Override
  public long getSize(ScoreDirector<WeekSketch> director) {
    return Integer.MAX_VALUE;
  }

  @Override
  public Iterator<SketchMove> createOriginalMoveIterator(ScoreDirector<WeekSketch> director) {
    throw new UnsupportedOperationException("Changes are drawn at random; use random selection");
  }

  @Override
  public Iterator<SketchMove> createRandomMoveIterator(
      ScoreDirector<WeekSketch> director, Random random) {
    SketchProposals proposals = new SketchProposals(director.getWorkingSolution(), random);
    return new Iterator<>() {
      private SketchMove drawn;

      /** False ends the search: steps that change nothing would never be counted as steps. */
      @Override
      public boolean hasNext() {
        for (int i = 0; i < TRIES && drawn == null; i++) {
          SketchMove proposed = proposals.next();
          drawn = proposed.isMoveDoable(director) ? proposed : null;
        }
        return drawn != null;
      }

      @Override
      public SketchMove next() {
        if (!hasNext()) {
          throw new NoSuchElementException("no proposal changes the sketch");
        }
        SketchMove next = drawn;
        drawn = null;
        return next;
      }
    };
  }
}
