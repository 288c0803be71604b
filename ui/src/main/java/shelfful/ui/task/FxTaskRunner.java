package shelfful.ui.task;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Works on threads of its own, which do not keep the program alive when its window is closed. */
public final class FxTaskRunner implements TaskRunner {

  @Override
  public <T> void start(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    Thread thread = new Thread(() -> run(work, then, failed), "work");
    thread.setDaemon(true);
    thread.start();
  }

  private <T> void run(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    try {
      T result = work.get();
      show(() -> then.accept(result));
    } catch (RuntimeException | Error fault) {
      show(() -> failed.accept(fault));
    }
  }

  @Override
  public void show(Runnable step) {
    Platform.runLater(step);
  }
}
