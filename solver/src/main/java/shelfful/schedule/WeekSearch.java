package shelfful.schedule;

import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.common.SelectionCacheType;
import org.optaplanner.core.config.heuristic.selector.common.SelectionOrder;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * OptaPlanner at work on one sketch of a week. One search at a time; {@link #end} from any thread.
 */
final class WeekSearch {
  private static final int REMEMBERED_SCORES = 300;

  private final EnvironmentMode mode;
  private volatile Solver<WeekSketch> running;
  private volatile boolean ended;

  WeekSearch(EnvironmentMode mode) {
    this.mode = mode;
  }

  /**
   * The best sketch found by so many evaluations; the given one when there is nothing to decide.
   */
  WeekSketch run(WeekSketch start, int evaluations, long seed) {
    if (ended || evaluations <= 0 || start.shares().isEmpty() || start.turns().isEmpty()) {
      return start;
    }
    Solver<WeekSketch> solver =
        SolverFactory.<WeekSketch>create(config(evaluations, seed)).buildSolver();
    running = solver;
    try {
      return ended ? start : solver.solve(start);
    } finally {
      running = null;
    }
  }

  /** Ends a running search soon and lets none begin. */
  void end() {
    ended = true;
    Solver<WeekSketch> solver = running;
    if (solver != null) {
      solver.terminateEarly();
    }
  }

  private SolverConfig config(int evaluations, long seed) {
    MoveIteratorFactoryConfig moves = new MoveIteratorFactoryConfig();
    moves.setMoveIteratorFactoryClass(SketchMoveFactory.class);
    moves.setCacheType(SelectionCacheType.JUST_IN_TIME);
    moves.setSelectionOrder(SelectionOrder.RANDOM);
    LocalSearchPhaseConfig phase = new LocalSearchPhaseConfig();
    phase.setMoveSelectorConfig(moves);
    phase.setAcceptorConfig(
        new LocalSearchAcceptorConfig().withLateAcceptanceSize(REMEMBERED_SCORES));
    phase.setForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withSolutionClass(WeekSketch.class)
        .withEntityClasses(ShareChoice.class, TurnChoice.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(WeekScorer.class))
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withTerminationConfig(
            new TerminationConfig().withScoreCalculationCountLimit((long) evaluations))
        .withPhases(phase);
  }
}
