package shelfful.ui.task;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Long work that lets the screen go first. A system with few processors shares them out fairly
 * between all who want them, which is not enough for the screen's thread: it would stand in line
 * behind every thread that plans. So it is asked for a sign of life all the time; where that is
 * late, whoever works long waits until it has come.
 */
final class Courtesy {
  private static final long EVERY = Duration.ofMillis(4).toNanos();

  /** Half a frame: a late sign still leaves the screen time to paint within two. */
  private static final long LATE = Duration.ofMillis(8).toNanos();

  /** A screen that hangs, as behind a window of the system, does not hold work up for good. */
  private static final long LONGEST = Duration.ofMillis(250).toNanos();

  private final LongSupplier clock;
  private final Consumer<Runnable> screen;
  private final AtomicReference<Sign> awaited;

  /**
   * Nothing was asked yet.
   *
   * @param clock in nanoseconds
   * @param screen does a step on the screen's thread, in the order they come
   */
  Courtesy(LongSupplier clock, Consumer<Runnable> screen) {
    this.clock = clock;
    this.screen = screen;
    this.awaited = new AtomicReference<>(new Sign(clock.getAsLong(), new CountDownLatch(0)));
  }

  /**
   * A sign of life.
   *
   * @param since when it is awaited
   * @param given is at nought once it was given
   */
  private record Sign(long since, CountDownLatch given) {
    boolean isGiven() {
      return given.getCount() == 0;
    }
  }

  /** Returns at once while the screen keeps up, and otherwise when it has. */
  void giveWay() {
    Sign sign = awaited.get();
    long waited = clock.getAsLong() - sign.since();
    if (sign.isGiven() && waited > EVERY) {
      ask(sign);
    } else if (!sign.isGiven() && waited > LATE) {
      hold(sign);
    }
  }

  private void ask(Sign last) {
    Sign next = new Sign(clock.getAsLong(), new CountDownLatch(1));
    if (awaited.compareAndSet(last, next)) {
      screen.accept(next.given()::countDown);
    }
  }

  private void hold(Sign sign) {
    try {
      if (!sign.given().await(LONGEST, TimeUnit.NANOSECONDS)) {
        // The same time again for the work.
        awaited.compareAndSet(sign, new Sign(clock.getAsLong() + LONGEST, sign.given()));
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
