package shelfful.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

/** Has the planner plan and keeps the times at which it showed better loads. */
final class PlannedLoad {
  private static final double NEAR = 0.99;

  private final String subject;
  private final long began = System.nanoTime();
  private final List<Shown> shown = new ArrayList<>();

  private record Shown(long millis, Load load) {}

  private PlannedLoad(String subject) {
    this.subject = subject;
  }

  /** A budget, made when its run begins. */
  @FunctionalInterface
  interface Budget {
    SearchBudget begin();
  }

  /** Ends after so many milliseconds, the last spreading of pieces not counted. */
  static Budget ofSeconds(double seconds) {
    return () ->
        SearchBudget.ofMillis(
            Math.round(1000 * seconds), () -> TimeUnit.NANOSECONDS.toMillis(System.nanoTime()));
  }

  /**
   * Plans once.
   *
   * @throws IllegalStateException when any load shown on the way breaks a rule
   */
  static Run run(String subject, LoadRequest request, Method method, Budget budget) {
    Heap.forget();
    PlannedLoad planned = new PlannedLoad(subject);
    LoadPlanner planner = new LoadPlanner(request);
    Load last = planner.plan(budget.begin(), planned::take);
    long millis = planned.millis();
    long heap = Heap.peakMegabytes();
    String whose = subject + ", " + method + ", seed " + request.seed();
    planned.shown.forEach(shown -> Figures.of(shown.load(), whose));
    Figures figures = Figures.of(last, whose);
    Effort effort =
        new Effort(
            OptionalLong.of(planned.shown.get(0).millis()),
            OptionalLong.of(planned.near(figures)),
            millis,
            planner.work(),
            heap);
    return new Run(planned.subject, method, request.seed(), last, figures, effort, true);
  }

  private void take(Load load) {
    shown.add(new Shown(millis(), load));
  }

  private long millis() {
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
  }

  /** When the first load within 1 % of the last one's worth, with its must-go pieces, was shown. */
  private long near(Figures last) {
    return shown.stream()
        .filter(shown -> isNear(Figures.counted(shown.load()), last))
        .mapToLong(Shown::millis)
        .findFirst()
        .orElseGet(this::millis);
  }

  private static boolean isNear(Figures figures, Figures last) {
    return figures.mustGoWaiting() <= last.mustGoWaiting()
        && figures.worth() >= NEAR * last.worth();
  }
}
