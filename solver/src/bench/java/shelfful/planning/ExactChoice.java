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
   * What came of a choice.
   *
   * @param load or empty when no choice could be stacked
   * @param proven whether the first choice for every column plan was the best there is, and could
   *     be stacked
   */
  public record Chosen(Optional<Load> load, boolean proven) {}

  /** The best load of the layers of some loads of a request. */
  public static Chosen best(LoadRequest request, List<Load> loads) {
    Loader.loadNativeLibraries();
    List<LevelPool> pools = LevelPool.of(request, loads);
    LevelChoice.Stacked best = null;
    boolean proven = true;
    for (LevelPool pool : pools) {
      Found found = best(pool, SECONDS / pools.size());
      proven &= found.proven();
      LevelChoice.Stacked stacked = found.stacked().orElse(best);
      if (best == null || stacked.merit().compareTo(best.merit()) > 0) {
        best = stacked;
      }
    }
    return new Chosen(Optional.ofNullable(best).map(LevelChoice.Stacked::load), proven);
  }

  private record Found(Optional<LevelChoice.Stacked> stacked, boolean proven) {}

  private static Found best(LevelPool pool, double seconds) {
    ChoiceModel model = new ChoiceModel(pool);
    double share = seconds;
    for (int i = 0; i < MOST_CHOICES; i++) {
      CpSolver solver = new CpSolver();
      solver.getParameters().setMaxTimeInSeconds(share);
      solver.getParameters().setNumWorkers(2);
      solver.getParameters().setRandomSeed(1);
      CpSolverStatus status = solver.solve(model.program());
      share -= solver.wallTime();
      if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
        break;
      }
      Optional<LevelChoice.Stacked> stacked = model.choice(solver).stacked();
      if (stacked.isPresent()) {
        return new Found(stacked, i == 0 && status == CpSolverStatus.OPTIMAL);
      }
      model.forbid(solver);
      if (share <= 0) {
        break;
      }
    }
    return new Found(Optional.empty(), false);
  }
}
