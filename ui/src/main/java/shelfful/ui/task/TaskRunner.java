package shelfful.ui.task;

import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Runs long work without holding up the screen. */
public interface TaskRunner {

  /**
   * Starts work away from the screen; what comes of it is handed over on the screen's thread.
   *
   * @param work may take long; touches nothing on the screen
   * @param then takes the result
   * @param failed takes what the work threw instead
   */
  <T> void start(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed);

  /** The same for work that nobody waits for: it gives way to everything else where it can. */
  <T> void startIdly(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed);

  /** Does a short step on the screen's thread when some time has gone by. */
  void after(Duration pause, Runnable step);

  /**
   * The same, and waits until what follows from it is painted. The waiting leaves the processor to
   * the screen. Not to be called on the screen's thread.
   *
   * @param most how long to wait at most
   */
  void showAndStandAside(Runnable step, Duration most);

  /**
   * Lets the screen go first: for long work to call between two short steps. Returns at once as
   * long as the screen's thread keeps up, and otherwise when it has caught up. May be called from
   * any thread but the screen's.
   */
  void giveWay();

  /** Does a short step on the screen's thread, soon. May be called from any thread. */
  void show(Runnable step);
}
