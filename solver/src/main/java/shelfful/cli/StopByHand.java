package shelfful.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Ctrl-C: stops the planning, and holds the end of the program until the best plan is saved. */
final class StopByHand {
  private final AtomicBoolean happened = new AtomicBoolean();
  private final Thread hook;

  private StopByHand(Runnable stop, CountDownLatch saved, long seconds) {
    hook =
        new Thread(
            () -> {
              happened.set(true);
              stop.run();
              try {
                saved.await(seconds, TimeUnit.SECONDS);
              } catch (InterruptedException givenUp) {
                Thread.currentThread().interrupt();
              }
            },
            "stop-by-hand");
  }

  /**
   * Listens from now on.
   *
   * @param stop asks the planning to end
   * @param saved comes down to zero when everything is saved
   * @param seconds the longest to wait for that
   */
  static StopByHand listen(Runnable stop, CountDownLatch saved, long seconds) {
    StopByHand byHand = new StopByHand(stop, saved, seconds);
    Runtime.getRuntime().addShutdownHook(byHand.hook);
    return byHand;
  }

  boolean happened() {
    return happened.get();
  }

  /** Listens no more, unless it is happening. */
  void forget() {
    if (!happened.get()) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException alreadyEnding) {
        happened.set(true);
      }
    }
  }
}
