package shelfful.ui.task;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does everything at once on the caller's thread, so that tests need no screen and no waiting. */
public final class SameThreadTaskRunner implements TaskRunner {
  private final List<Runnable> later = new ArrayList<>();

  @Override
  public <T> void start(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    T result;
    try {
      result = work.get();
    } catch (RuntimeException | Error fault) {
      failed.accept(fault);
      return;
    }
    then.accept(result);
  }

  @Override
  public <T> void startIdly(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    start(work, then, failed);
  }

  @Override
  public void after(Duration pause, Runnable step) {
    later.add(step);
  }

  /** Lets the time go by that steps wait for; returns how many there were. */
  public int passTime() {
    List<Runnable> due = List.copyOf(later);
    later.clear();
    due.forEach(Runnable::run);
    return due.size();
  }

  @Override
  public void showAndStandAside(Runnable step, Duration most) {
    step.run();
  }

  @Override
  public void giveWay() {}

  @Override
  public void show(Runnable step) {
    step.run();
  }
}
