package shelfful.ui.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/**
 * A watch-dog: asks the screen's thread for an answer again and again and keeps how long it waited.
 * Beside it a thread does nothing but sleep; what that oversleeps is owed to the machine, not to
 * the screen's thread. For long waits it tells who had the processors meanwhile.
 */
final class ScreenWatch {
  private static final long NOTICED = TimeUnit.MILLISECONDS.toNanos(100);
  private static final long PAUSE = 10;

  private final long begun = System.nanoTime();
  private final List<Long> waits = new ArrayList<>();
  private final List<Long> oversleeps = new ArrayList<>();
  private final List<String> told = new ArrayList<>();
  private ProcessorTimes spent = ProcessorTimes.now();
  private volatile boolean over;

  /** Watches for so long; once. */
  void watch(long millis) throws InterruptedException {
    Thread sleeper = new Thread(this::sleep, "sleeper");
    sleeper.start();
    ProcessorTimes before = spent;
    while (System.nanoTime() - begun < TimeUnit.MILLISECONDS.toNanos(millis)) {
      ask();
      Thread.sleep(PAUSE);
    }
    spent = ProcessorTimes.now().since(before);
    over = true;
    sleeper.join();
  }

  private void ask() throws InterruptedException {
    ProcessorTimes before = ProcessorTimes.now();
    long asked = System.nanoTime();
    CountDownLatch answered = new CountDownLatch(1);
    Platform.runLater(answered::countDown);
    answered.await();
    long wait = System.nanoTime() - asked;
    waits.add(wait);
    if (wait > NOTICED) {
      told.add(
          String.format(
              Locale.ROOT,
              "%.0f ms after %d ms: %s",
              wait / 1e6,
              TimeUnit.NANOSECONDS.toMillis(asked - begun),
              ProcessorTimes.now().since(before).told()));
    }
  }

  private void sleep() {
    try {
      while (!over) {
        long before = System.nanoTime();
        Thread.sleep(PAUSE);
        oversleeps.add(System.nanoTime() - before - TimeUnit.MILLISECONDS.toNanos(PAUSE));
      }
    } catch (InterruptedException fault) {
      throw new IllegalStateException(fault);
    }
  }

  /** How long each answer took, in nanoseconds. */
  List<Long> waits() {
    return waits;
  }

  /** How much longer than asked for each sleep was, in nanoseconds; to be read afterwards. */
  List<Long> oversleeps() {
    return oversleeps;
  }

  /** A line for each wait over 100 ms. */
  List<String> told() {
    return told;
  }

  /** Of the time that all processors were at work, what other programs had; from 0 to 1. */
  double othersShare() {
    return spent.machine() == 0 ? 0 : (double) spent.others() / spent.machine();
  }
}
