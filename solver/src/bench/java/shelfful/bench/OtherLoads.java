package shelfful.bench;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import shelfful.load.Load;
import shelfful.planning.HandLoader;
import shelfful.planning.PlanningWork;
import shelfful.sample.SampleLoad;

/** Loads of methods that make one load and are done. */
final class OtherLoads {
  private static final PlanningWork NO_SEARCH = new PlanningWork(0, 0, 0);

  private OtherLoads() {}

  /** As a sensible person loads. */
  static Run byHand(SampleLoad subject) {
    return run(subject, Method.BY_HAND, () -> HandLoader.best(subject.asked()));
  }

  /**
   * Makes one load.
   *
   * @throws IllegalStateException when it breaks a rule
   */
  static Run run(SampleLoad subject, Method method, Supplier<Load> making) {
    Heap.forget();
    long began = System.nanoTime();
    Load load = making.get();
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
    Effort effort =
        new Effort(
            OptionalLong.empty(), OptionalLong.empty(), millis, NO_SEARCH, Heap.peakMegabytes());
    Figures figures = Figures.of(load, subject.name() + ", " + method);
    return new Run(subject.name(), method, 0, load, figures, effort);
  }
}
