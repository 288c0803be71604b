package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.app.FiringPlaces;
import shelfful.app.KeepAWeek;
import shelfful.app.Opened;
import shelfful.app.PlanAWeek;
import shelfful.review.InspectedWeek;
import shelfful.ui.words.Words;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Measures what is felt at the week; prints its figures and sets no limit. */
@Tag("slow")
class WeekBenchmarkTest {
  private static WeekRequest month() {
    return ((Opened.Ready<KeepAWeek.Week>) DemoMonth.open()).value().request();
  }

  private static long since(long start) {
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  private static void tell(String what, long milliseconds) {
    System.out.println("week: " + what + " " + milliseconds + " ms");
  }

  @Test
  void tellsHowLongTheMonthTakes() throws InterruptedException {
    PlanAWeek planning = new PlanAWeek(month());
    CountDownLatch first = new CountDownLatch(1);
    CountDownLatch over = new CountDownLatch(1);
    long start = System.nanoTime();
    new Thread(
            () -> {
              planning.run(Duration.ofSeconds(60), week -> first.countDown());
              over.countDown();
            })
        .start();
    first.await();
    tell("first inspected month after", since(start));
    Thread.sleep(1500);
    long stopped = System.nanoTime();
    planning.stop();
    over.await();
    tell("stop while loads are searched", since(stopped));
    look(planning.best().orElseThrow());
    earlyStop();
  }

  private static void earlyStop() throws InterruptedException {
    PlanAWeek planning = new PlanAWeek(month());
    CountDownLatch over = new CountDownLatch(1);
    new Thread(
            () -> {
              planning.run(Duration.ofSeconds(60), week -> {});
              over.countDown();
            })
        .start();
    Thread.sleep(1500);
    long stopped = System.nanoTime();
    planning.stop();
    over.await();
    tell("stop before the first month", since(stopped));
  }

  private static void look(InspectedWeek week) {
    WeekPlan plan = week.plan();
    long start = System.nanoTime();
    ShownWeek shown = ShownWeek.of(week, Words.english());
    tell("words and bars of " + shown.firings().size() + " firings", since(start));
    SplittableRandom random = new SplittableRandom(3);
    start = System.nanoTime();
    FiringPlaces places = new FiringPlaces(plan, plan.firings().get(3).id());
    for (int i = 0; i < 1000; i++) {
      places.near(
          plan.request().kilns().get(i % 2).kilnId(),
          plan.request().start().plusMinutes(random.nextInt(28 * 24 * 60)));
    }
    tell("1000 places while a firing is carried", since(start));
    start = System.nanoTime();
    Optional<InspectedWeek> held =
        shelfful.app.AlterAWeek.hold(plan, plan.firings().get(3).id(), shelfful.week.Hold.ALL);
    tell("freezing, inspected", since(start));
    assertThat(held).isPresent();
  }
}
