package shelfful.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import shelfful.load.Load;
import shelfful.planning.ExactChoice;
import shelfful.planning.HandLoader;
import shelfful.planning.PlanningWork;
import shelfful.sample.SampleLoad;

/** Loads of methods that make one load and are done. */
final class OtherLoads {
  private static final PlanningWork NO_SEARCH = new PlanningWork(0, 0, 0);

  private OtherLoads() {}

  /** As a sensible person loads. */
  static Run byHand(SampleLoad subject) {
    return run(subject, Method.BY_HAND, System.nanoTime(), () -> HandLoader.best(subject.asked()));
  }

  /**
   * The best that can be made of the layers of all loads so far. Each of those loads is a choice of
   * layers too, so it is never worse than the best of them.
   */
  static Run exactChoice(SampleLoad subject, List<Run> runs) {
    List<Load> loads = runs.stream().map(Run::load).toList();
    long began = System.nanoTime();
    ExactChoice.Chosen chosen = ExactChoice.best(subject.asked(), loads);
    Optional<Run> made =
        chosen.load().map(load -> run(subject, Method.EXACT_CHOICE, began, () -> load));
    Run best = runs.stream().max(Comparator.comparing(Run::figures)).orElseThrow();
    Run chosenRun =
        made.filter(run -> run.figures().compareTo(best.figures()) >= 0)
            .orElseGet(() -> run(subject, Method.EXACT_CHOICE, began, best::load));
    return proven(chosenRun, chosen.proven());
  }

  private static Run proven(Run run, boolean isProven) {
    return new Run(
        run.subject(),
        run.method(),
        run.seed(),
        run.load(),
        run.figures(),
        run.effort(),
        isProven);
  }

  /**
   * Makes one load.
   *
   * @throws IllegalStateException when it breaks a rule
   */
  private static Run run(SampleLoad subject, Method method, long began, Supplier<Load> making) {
    Heap.forget();
    Load load = making.get();
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
    Effort effort =
        new Effort(
            OptionalLong.empty(), OptionalLong.empty(), millis, NO_SEARCH, Heap.peakMegabytes());
    Figures figures = Figures.of(load, subject.name() + ", " + method);
    return new Run(subject.name(), method, 0, load, figures, effort, true);
  }
}
