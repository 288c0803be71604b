package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/**
 * How a budget is spent: first every column plan is tried, then the best goes on in a hurry, then
 * with patience. In time two desks with seeds of their own work side by side and meet after every
 * round; in steps one works alone, so that the outcome is repeatable.
 */
final class Course {
  /** How much of the budget goes into finding out which column plan is best. */
  private static final double TRIAL_SHARE = 0.3;

  /**
   * How much of the rest goes into the quick search; what is left retries what was refused in a
   * hurry.
   */
  private static final double QUICK_SHARE = 0.6;

  private static final int ROUNDS = 8;
  private static final int HASTY_ROUNDS = 5;

  private final Lead lead;
  private final BooleanSupplier stop;

  Course(Lead lead, BooleanSupplier stop) {
    this.lead = lead;
    this.stop = stop;
  }

  void inSteps(List<PlanDesk> desks, SearchBudget budget) {
    SearchBudget left = budget;
    if (desks.size() > 1) {
      SearchBudget each = budget.share(TRIAL_SHARE / desks.size());
      for (PlanDesk desk : desks) {
        search(desk, each, 0);
        left = left.without(each);
      }
    }
    PlanDesk desk = lead.desk();
    SearchBudget quick = left.share(QUICK_SHARE);
    search(desk, quick, 1);
    desk.tryHarder();
    search(desk, left.without(quick), 2);
  }

  void inTime(List<PlanDesk> desks, UnaryOperator<PlanDesk> another, SearchBudget budget) {
    ExecutorService workers = Executors.newFixedThreadPool(2, Course::worker);
    try {
      if (desks.size() > 1) {
        SearchBudget each = budget.share(TRIAL_SHARE * 2 / (desks.size() + 1));
        together(workers, desks.stream().map(desk -> search(desk, each)).toList());
      }
      PlanDesk first = lead.desk();
      PlanDesk second = another.apply(first);
      for (int round = 1; round <= ROUNDS && !stop.getAsBoolean(); round++) {
        if (round == HASTY_ROUNDS + 1) {
          first.tryHarder();
          second.tryHarder();
        }
        SearchBudget share = budget.share(1.0 / (ROUNDS + 1 - round));
        int number = round;
        together(
            workers,
            List.of(() -> search(first, share, number), () -> search(second, share, number)));
        first.meet(second);
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "planning");
    thread.setDaemon(true);
    return thread;
  }

  private Runnable search(PlanDesk desk, SearchBudget budget) {
    return () -> search(desk, budget, 0);
  }

  private void search(PlanDesk desk, SearchBudget budget, int round) {
    if (!budget.isSpent() && !stop.getAsBoolean()) {
      desk.searchOn(budget, round, () -> lead.offer(desk));
    }
  }

  private static void together(ExecutorService workers, List<Runnable> works) {
    List<Future<?>> running = new ArrayList<>();
    works.forEach(work -> running.add(workers.submit(work)));
    for (Future<?> future : running) {
      try {
        future.get();
      } catch (ExecutionException fault) {
        throw new IllegalStateException("the search failed", fault.getCause());
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }
}
