package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * How a budget is spent: first every column plan is tried, those that come out nearly alike again;
 * then the best goes on in a hurry, then with patience. In time two desks with seeds of their own
 * work side by side and meet after every round, and before that some loads are begun anew (decision
 * 0038); in steps one works alone, so that the outcome is repeatable.
 */
final class Course {
  /** How much of the budget goes into the first trial of all column plans together. */
  private static final double TRIAL_SHARE = 0.3;

  /** The second trial, of plans that come out nearly alike, is so much of the first. */
  private static final double SECOND_TRIAL = 0.5;

  /** Share of the best worth from which a plan is nearly as good after a trial in steps. */
  private static final double NEARLY = 0.99;

  /** The same after a trial in time, which says less: most are the first thing a machine does. */
  private static final double NEARLY_IN_TIME = 0.97;

  /**
   * How much of the rest goes into the quick search; what is left retries what was refused in a
   * hurry.
   */
  private static final double QUICK_SHARE = 0.6;

  /** So many times in time each of two desks begins a load anew. */
  private static final int STARTS = 5;

  /** How much of what is left after the trials goes into one such start. */
  private static final double START_SHARE = 0.08;

  /** No start is given more: who waits for something better sees nothing of most of them. */
  private static final int MOST_MILLIS = 1000;

  /** A start with less time for each layer of the load at hand comes to nothing. */
  private static final int LEAST_MILLIS = 25;

  /** Loads begun anew have rounds of their own, for the sake of their chance. */
  private static final int FIRST_START = 100;

  private static final int TRIALS = 2;
  private static final int THREADS = 2;
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
    SearchBudget each = budget.share(TRIAL_SHARE / desks.size());
    List<PlanDesk> open = desks;
    for (int trial = 0; trial < TRIALS && open.size() > 1; trial++) {
      for (PlanDesk desk : open) {
        search(desk, each, -trial);
        left = left.without(each);
      }
      each = each.share(SECOND_TRIAL);
      open = nearlyAlike(open, NEARLY);
    }
    PlanDesk desk = lead.desk();
    SearchBudget quick = left.share(QUICK_SHARE);
    search(desk, quick, 1);
    desk.tryHarder();
    search(desk, left.without(quick), 2);
  }

  void inTime(List<PlanDesk> desks, UnaryOperator<PlanDesk> another, SearchBudget budget) {
    ExecutorService workers = Executors.newFixedThreadPool(THREADS, Course::worker);
    try {
      List<PlanDesk> open = desks;
      SearchBudget each = budget.share(TRIAL_SHARE * THREADS / (desks.size() + 1));
      for (int trial = 0; trial < TRIALS && open.size() > 1; trial++) {
        SearchBudget share = each;
        int round = -trial;
        together(workers, open.stream().map(desk -> tried(desk, share, round)).toList());
        each = each.anew().share(SECOND_TRIAL);
        open = nearlyAlike(open, NEARLY_IN_TIME);
      }
      PlanDesk first = lead.desk();
      PlanDesk second = another.apply(first);
      if (first.mayStartAnew()) {
        startAnew(workers, first, second, budget);
      }
      goOn(workers, first, second, budget);
    } finally {
      workers.shutdownNow();
    }
  }

  private void startAnew(
      ExecutorService workers, PlanDesk first, PlanDesk second, SearchBudget budget) {
    SearchBudget each = budget.share(START_SHARE).atMost(MOST_MILLIS);
    for (int start = 0; start < STARTS && !stop.getAsBoolean(); start++) {
      SearchBudget share = each.anew();
      if (!share.lasts((long) LEAST_MILLIS * first.merit().layers())) {
        return;
      }
      int round = FIRST_START + start;
      sideBySide(
          workers, first, second, desk -> desk.startAnew(share, round, () -> lead.offer(desk)));
    }
  }

  private void goOn(ExecutorService workers, PlanDesk first, PlanDesk second, SearchBudget budget) {
    for (int round = 1; round <= ROUNDS && !stop.getAsBoolean(); round++) {
      if (round == HASTY_ROUNDS + 1) {
        first.tryHarder();
        second.tryHarder();
      }
      SearchBudget share = budget.share(1.0 / (ROUNDS + 1 - round));
      int number = round;
      sideBySide(workers, first, second, desk -> search(desk, share, number));
    }
  }

  private static void sideBySide(
      ExecutorService workers, PlanDesk first, PlanDesk second, Consumer<PlanDesk> work) {
    together(workers, List.of(() -> work.accept(first), () -> work.accept(second)));
    first.meet(second);
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "planning");
    thread.setDaemon(true);
    return thread;
  }

  private Runnable tried(PlanDesk desk, SearchBudget budget, int round) {
    return () -> search(desk, budget.anew(), round);
  }

  private List<PlanDesk> nearlyAlike(List<PlanDesk> desks, double least) {
    Merit best = lead.desk().merit();
    return desks.stream().filter(desk -> desk.merit().isNearly(best, least)).toList();
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
