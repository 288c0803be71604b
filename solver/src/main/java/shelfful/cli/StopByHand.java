package shelfful.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Ctrl-C: stops the planning, and holds the end of the program until the best plan is saved. When
 * it comes before planning has begun, the first load is still made and saved.
 */
final class StopByHand {
  private static final long LAST_WORDS_SECONDS = 10;

  private final AtomicBoolean happened = new AtomicBoolean();
  private final AtomicReference<Runnable> stop = new AtomicReference<>(() -> {});
  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::hold, "stop-by-hand");

  private StopByHand() {}

  /** Listens from now on. */
  static StopByHand listen() {
    StopByHand byHand = new StopByHand();
    Runtime.getRuntime().addShutdownHook(byHand.hook);
    return byHand;
  }

  private void hold() {
    happened.set(true);
    stop.get().run();
    try {
      done.await(LAST_WORDS_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException givenUp) {
      Thread.currentThread().interrupt();
    }
  }

  /** What asks the work to end; asked at once when the hand has been there already. */
  void stops(Runnable work) {
    stop.set(work);
    if (happened.get()) {
      work.run();
    }
  }

  boolean happened() {
    return happened.get();
  }

  /** Everything is saved: the program may end. Listens no more. */
  void done() {
    done.countDown();
    if (!happened.get()) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException alreadyEnding) {
        happened.set(true);
      }
    }
  }
}
