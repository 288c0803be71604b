package shelfful.ui.task;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/** Works on threads of its own, which do not keep the program alive when its window is closed. */
public final class FxTaskRunner implements TaskRunner {
  private final Courtesy courtesy = new Courtesy(System::nanoTime, this::show);
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(work -> daemon(work, "clock"));

  @Override
  public <T> void start(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    Thread thread = daemon(() -> run(work, then, failed), "work");
    thread.setPriority(Thread.NORM_PRIORITY - 1);
    thread.start();
  }

  @Override
  public <T> void startIdly(Supplier<T> work, Consumer<T> then, Consumer<Throwable> failed) {
    Thread thread = daemon(() -> run(work, then, failed), "idle");
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void after(Duration pause, Runnable step) {
    clock.schedule(() -> show(step), pause.toMillis(), TimeUnit.MILLISECONDS);
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
  public void showAndStandAside(Runnable step, Duration most) {
    CountDownLatch painted = new CountDownLatch(1);
    show(
        () -> {
          step.run();
          new Pulses(painted).start();
        });
    try {
      painted.await(most.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** Lets go once the frame that a step led to is painted: two frames are begun after it. */
  private static final class Pulses extends AnimationTimer {
    private static final int FRAMES = 3;

    private final CountDownLatch painted;
    private int frames;

    Pulses(CountDownLatch painted) {
      this.painted = painted;
    }

    @Override
    public void handle(long now) {
      frames++;
      if (frames == FRAMES) {
        stop();
        painted.countDown();
      }
    }
  }

  @Override
  public void giveWay() {
    courtesy.giveWay();
  }

  @Override
  public void show(Runnable step) {
    Platform.runLater(step);
  }
}
