package shelfful.ui;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;

/** The screen in memory that the tests paint on; started once, with the first use. */
public final class Screen {
  static {
    Platform.startup(() -> {});
    Platform.setImplicitExit(false);
  }

  private Screen() {}

  /** Does something on the screen's thread and waits for its result. */
  public static <T> T on(Callable<T> step) {
    FutureTask<T> task = new FutureTask<>(step);
    Platform.runLater(task);
    try {
      return task.get();
    } catch (InterruptedException | ExecutionException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
