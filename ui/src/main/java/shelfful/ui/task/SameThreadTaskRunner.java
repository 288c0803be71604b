package shelfful.ui.task;

import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does everything at once on the caller's thread, so that tests need no screen and no waiting. */
public final class SameThreadTaskRunner implements TaskRunner {

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
  public void show(Runnable step) {
    step.run();
  }
}
