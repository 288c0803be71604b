package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.common.SelectionCacheType;
import org.optaplanner.core.config.heuristic.selector.common.SelectionOrder;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;

/**
 * OptaPlanner at work on one column plan: it holds the state, keeps the score and ends the search.
 */
final class LoadSearch {
  private static final int REMEMBERED_SCORES = 20;

  private final SketchJudge judge;
  private final Rulebook rulebook;
  private final List<PieceChoice> pieces = new ArrayList<>();
  private final EnvironmentMode mode;
  private final BooleanSupplier stop;
  private volatile Solver<KilnLoad> running;

  LoadSearch(SketchJudge judge, Rebuilder rebuilder, EnvironmentMode mode, BooleanSupplier stop) {
    this.judge = judge;
    this.mode = mode;
    this.stop = stop;
    int levels = mostLevels();
    SlotTable slots = new SlotTable(judge.stand(), levels, judge.ware());
    this.rulebook = new Rulebook(judge, new Workbench(rebuilder, slots, levels));
    for (Lot lot : judge.ware().singles()) {
      for (int i = 0; i < lot.size(); i++) {
        pieces.add(new PieceChoice(pieces.size(), lot));
      }
    }
  }

  /**
   * As many levels as the thinnest shelves on the shortest posts would make, or as there are
   * shelves.
   */
  private int mostLevels() {
    int shelves =
        judge.stand().request().studio().shelves().stream().mapToInt(s -> s.count()).sum();
    long least = Math.max(10_000, judge.stand().headroom() + 1);
    return (int) Math.max(1, Math.min(shelves, judge.stand().chamberHeight() / least));
  }

  /** Searches from a sketch; every better one is handed on. Returns the best. */
  Sketch run(Sketch start, SearchBudget budget, long seed, Consumer<Sketch> better) {
    if (pieces.isEmpty() || stop.getAsBoolean()) {
      return start;
    }
    rulebook.bench().until(budget, this::end);
    KilnLoad load = new KilnLoad(pieces, rulebook.bench().slots().slots(), rulebook);
    rulebook.bench().slots().changes(pieces, start).forEach(c -> c.piece().setSlot(c.to()));
    Solver<KilnLoad> solver = SolverFactory.<KilnLoad>create(config(budget, seed)).buildSolver();
    solver.addEventListener(
        event -> {
          if (event.getNewBestScore().isFeasible()) {
            better.accept(sketch(event.getNewBestSolution()));
          }
        });
    running = solver;
    try {
      KilnLoad best = solver.solve(load);
      return best.getScore().isFeasible() ? sketch(best) : start;
    } finally {
      running = null;
    }
  }

  /** Ends a running search soon; the best is kept. */
  void end() {
    Solver<KilnLoad> solver = running;
    if (solver != null) {
      solver.terminateEarly();
    }
  }

  private Sketch sketch(KilnLoad load) {
    return SlotCounts.of(load.pieces())
        .sketch(judge.stand(), judge.ware().lots(), judge.staying().levels());
  }

  private SolverConfig config(SearchBudget budget, long seed) {
    MoveIteratorFactoryConfig moves = new MoveIteratorFactoryConfig();
    moves.setMoveIteratorFactoryClass(RebuildMoveFactory.class);
    moves.setCacheType(SelectionCacheType.JUST_IN_TIME);
    moves.setSelectionOrder(SelectionOrder.RANDOM);
    LocalSearchPhaseConfig phase = new LocalSearchPhaseConfig();
    phase.setMoveSelectorConfig(moves);
    phase.setAcceptorConfig(
        new LocalSearchAcceptorConfig().withLateAcceptanceSize(REMEMBERED_SCORES));
    phase.setForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withSolutionClass(KilnLoad.class)
        .withEntityClasses(PieceChoice.class)
        .withConstraintProviderClass(LoadConstraintProvider.class)
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withTerminationConfig(budget.termination())
        .withPhases(phase);
  }
}
