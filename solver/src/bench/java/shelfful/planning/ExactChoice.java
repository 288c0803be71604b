package shelfful.planning;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import java.util.Optional;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * The best load that can be made of the layers of other loads, by integer programming (CP-SAT of
 * OR-tools): heights add up, no lot and no post is used more often than there is, worth is the
 * most. A layer may be used with pieces left off.
 *
 * <p>The program does not know of zones and keep-outs. When the best choice cannot be stacked in
 * any order tried, it is forbidden and the next best is looked for.
 */
public final class ExactChoice {
  private static final double SECONDS = 30;
  private static final int MOST_CHOICES = 12;

  private ExactChoice() {}

  /**
   * The best load of the layers of some loads of a request.
   *
   * @return empty when no choice could be stacked
   */
  public static Optional<Load> best(LoadRequest request, List<Load> loads) {
    Loader.loadNativeLibraries();
    Optional<Load> best = Optional.empty();
    Merit bestMerit = null;
    List<LevelPool> pools = LevelPool.of(request, loads);
    for (LevelPool pool : pools) {
      Optional<Found> found = best(pool, SECONDS / pools.size());
      if (found.isPresent()
          && (bestMerit == null || found.get().merit().compareTo(bestMerit) > 0)) {
        bestMerit = found.get().merit();
        best = Optional.of(found.get().load());
      }
    }
    return best;
  }

  private record Found(Load load, Merit merit) {}

  private static Optional<Found> best(LevelPool pool, double seconds) {
    ChoiceModel model = new ChoiceModel(pool);
    long until = System.nanoTime() + (long) (seconds * 1e9);
    for (int i = 0; i < MOST_CHOICES && System.nanoTime() < until; i++) {
      CpSolver solver = new CpSolver();
      solver.getParameters().setMaxTimeInSeconds((until - System.nanoTime()) / 1e9);
      solver.getParameters().setNumWorkers(2);
      solver.getParameters().setRandomSeed(1);
      CpSolverStatus status = solver.solve(model.program());
      if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
        return Optional.empty();
      }
      LevelChoice choice = model.choice(solver);
      Optional<LevelChoice.Stacked> stacked = choice.stacked();
      if (stacked.isPresent()) {
        return stacked.map(s -> new Found(s.load(), s.merit()));
      }
      model.forbid(solver);
    }
    return Optional.empty();
  }
}
