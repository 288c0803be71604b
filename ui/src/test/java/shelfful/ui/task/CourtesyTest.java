package shelfful.ui.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class CourtesyTest {
  private final AtomicLong now = new AtomicLong(1000);
  private final Queue<Runnable> screen = new ConcurrentLinkedQueue<>();
  private final Courtesy courtesy = new Courtesy(now::get, screen::add);

  private void pass(long millis) {
    now.addAndGet(Duration.ofMillis(millis).toNanos());
  }

  private void screenWorks() {
    while (!screen.isEmpty()) {
      screen.remove().run();
    }
  }

  /** Starts work that gives way once, and waits until it is held or done. */
  private Thread work() throws InterruptedException {
    Thread work = new Thread(courtesy::giveWay);
    work.start();
    while (work.isAlive() && work.getState() != Thread.State.TIMED_WAITING) {
      Thread.sleep(1);
    }
    return work;
  }

  @Test
  void asksTheScreenOnceHoweverOftenWorkAsks() {
    pass(20);
    courtesy.giveWay();
    courtesy.giveWay();
    courtesy.giveWay();
    assertThat(screen).hasSize(1);
    screenWorks();
    courtesy.giveWay();
    assertThat(screen).as("a moment after the last sign").isEmpty();
    pass(20);
    courtesy.giveWay();
    assertThat(screen).hasSize(1);
  }

  @Test
  void holdsWorkUpUntilALateScreenHasCaughtUp() throws InterruptedException {
    pass(20);
    courtesy.giveWay();
    assertThat(work().isAlive()).as("not late yet").isFalse();
    pass(20);
    Thread one = work();
    Thread other = work();
    assertThat(one.isAlive()).isTrue();
    assertThat(other.isAlive()).isTrue();
    screenWorks();
    one.join();
    other.join();
  }

  @Test
  void goesOnForAWhileWhenTheScreenHangs() throws InterruptedException {
    pass(20);
    courtesy.giveWay();
    pass(20);
    work().join();
    assertThat(screen).as("never answered").hasSize(1);
    pass(20);
    assertThat(work().isAlive()).as("not held again at once").isFalse();
    pass(1000);
    Thread later = work();
    assertThat(later.isAlive()).as("held again").isTrue();
    screenWorks();
    later.join();
  }
}
