package shelfful.ui.task;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Keeps work and steps until a test lets them happen, so that the order of things can be chosen.
 */
public final class QueuedTaskRunner implements TaskRunner {
  private final Deque<Runnable> work = new ArrayDeque<>();
  private final Deque<Runnable> later = new ArrayDeque<>();
  private final Deque<Runnable> steps = new ArrayDeque<>();
  private int waysGiven;

  @Override
  public <T> void start(Supplier<T> task, Consumer<T> then, Consumer<Throwable> failed) {
    work.add(
        () -> {
          T result = task.get();
          show(() -> then.accept(result));
        });
  }

  @Override
  public <T> void startIdly(Supplier<T> task, Consumer<T> then, Consumer<Throwable> failed) {
    start(task, then, failed);
  }

  @Override
  public void after(Duration pause, Runnable step) {
    later.add(step);
  }

  /** Lets the time go by that steps wait for. */
  public void passTime() {
    steps.addAll(later);
    later.clear();
  }

  @Override
  public void showAndStandAside(Runnable step, Duration most) {
    show(step);
  }

  @Override
  public void giveWay() {
    waysGiven++;
  }

  /** How often work let the screen go first. */
  public int waysGiven() {
    return waysGiven;
  }

  @Override
  public void show(Runnable step) {
    steps.add(step);
  }

  /** Does the oldest work; what it shows still waits. */
  public void doWork() {
    work.remove().run();
  }

  /** Does the latest work before what was begun earlier. */
  public void doLatestWork() {
    work.removeLast().run();
  }

  /** How much work waits to be done. */
  public int waiting() {
    return work.size();
  }

  /** Does all steps on the screen; returns how many there were. */
  public int doSteps() {
    int done = 0;
    while (!steps.isEmpty()) {
      steps.remove().run();
      done++;
    }
    return done;
  }
}
