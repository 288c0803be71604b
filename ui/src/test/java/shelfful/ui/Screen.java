package shelfful.ui;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Assumptions;

/**
 * The screen in memory that the tests paint on; started once, with the first use. It needs neither
 * a display nor a window system, but JavaFX sets words with libpango, libfreetype and a font of the
 * machine: without them the tests that paint are skipped, and say so.
 */
public final class Screen {
  private static Optional<Boolean> letters = Optional.empty();

  private Screen() {}

  /** Does something on the screen's thread and waits for its result. */
  public static <T> T on(Callable<T> step) {
    Assumptions.assumeTrue(started(), "JavaFX finds libpango, libfreetype and a font");
    return ask(step);
  }

  /** Not in a static initialiser: the screen's thread would wait for it, and it for that thread. */
  private static synchronized boolean started() {
    if (letters.isEmpty()) {
      Platform.startup(() -> {});
      Platform.setImplicitExit(false);
      letters = Optional.of(ask(Screen::hasLetters));
    }
    return letters.get();
  }

  private static boolean hasLetters() {
    try {
      return new Text("words").getLayoutBounds().getWidth() > 0;
    } catch (LinkageError | NullPointerException withoutThem) {
      return false;
    }
  }

  private static <T> T ask(Callable<T> step) {
    FutureTask<T> task = new FutureTask<>(step);
    Platform.runLater(task);
    try {
      return task.get();
    } catch (InterruptedException | ExecutionException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
