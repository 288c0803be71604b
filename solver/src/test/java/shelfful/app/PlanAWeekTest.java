package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import shelfful.files.WeekReader;
import shelfful.files.WeekWriter;
import shelfful.fixture.Weeks;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.ware.Stage;
import shelfful.week.KilnWork;
import shelfful.week.Span;
import shelfful.week.Waiting;
import shelfful.week.WeekEffort;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** A run of planning a week, from outside. */
class PlanAWeekTest {

  private static WeekRequest request(int rounds) {
    return Weeks.week(
            14,
            List.of(Weeks.kiln("K1", Weeks.weekdays())),
            List.of(
                Weeks.ware("A", "basin", 6, Stage.BONE_DRY, "2026-06-12"),
                Weeks.ware("B", "drum", 3, Stage.GLAZED, "2026-06-04")))
        .with(new WeekEffort(1, rounds, 2));
  }

  private static WeekRequest month() {
    return WeekReader.request(Path.of("../demo-data/month.json")).found().orElseThrow();
  }

  @Test
  void theSameRequestGivesTheSameBytes() {
    byte[] once =
        WeekWriter.bytes(new PlanAWeek(request(4)).run(WeekListener.none()).orElseThrow());
    byte[] again =
        WeekWriter.bytes(new PlanAWeek(request(4)).run(WeekListener.none()).orElseThrow());

    assertThat(again).isEqualTo(once);
  }

  @Test
  void planningALoadOfTheWeekCanBeHeldUpBetweenSteps() {
    AtomicInteger held = new AtomicInteger();
    new PlanAWeek(request(1))
        .run(
            new WeekListener() {
              @Override
              public void better(InspectedWeek week) {}

              @Override
              public void betweenSteps() {
                held.incrementAndGet();
              }
            });
    assertThat(held.get()).isPositive();
  }

  @Test
  void stoppedWhileItGoesOnItKeepsTheBestWeek() throws Exception {
    PlanAWeek planning = new PlanAWeek(request(10_000));
    CountDownLatch first = new CountDownLatch(1);
    ExecutorService worker = Executors.newSingleThreadExecutor();
    try {
      Future<Optional<InspectedWeek>> week =
          worker.submit(() -> planning.run(better -> first.countDown()));
      assertThat(first.await(60, TimeUnit.SECONDS)).isTrue();

      planning.stop();

      assertThat(week.get(60, TimeUnit.SECONDS)).isPresent();
    } finally {
      worker.shutdownNow();
    }
  }

  @Test
  void stoppedByHandBothLoadsThatArePlannedAtOnceAreBrokenOff() throws Exception {
    // So many steps of a kilnful take far longer than the wait below: both must be told to stop.
    WeekRequest endless = month().with(new WeekEffort(1, 0, 100_000));
    PlanAWeek planning = new PlanAWeek(endless);
    CountDownLatch first = new CountDownLatch(1);
    ExecutorService worker = Executors.newSingleThreadExecutor();
    try {
      Future<Optional<InspectedWeek>> week =
          worker.submit(() -> planning.run(Duration.ofDays(1), better -> first.countDown()));
      assertThat(first.await(60, TimeUnit.SECONDS)).isTrue();

      planning.stop();

      assertThat(week.get(60, TimeUnit.SECONDS)).isEqualTo(planning.best()).isPresent();
    } finally {
      worker.shutdownNow();
    }
  }

  @Test
  void stoppedBeforeItBeginsEveryPieceWaitsForThatReason() {
    PlanAWeek planning = new PlanAWeek(request(0));
    planning.stop();

    InspectedWeek week = planning.run(WeekListener.none()).orElseThrow();

    assertThat(week.plan().firings()).isEmpty();
    assertThat(week.plan().waiting())
        .extracting(Waiting::reason)
        .containsOnly(Waiting.Reason.NOT_PLANNED);
  }

  @Test
  void aWeekThatTheJudgeRefusesIsToldOnce() {
    WeekPlan plan = new PlanAWeek(request(0)).run(WeekListener.none()).orElseThrow().plan();
    WeekRequest frozen = ChangeAWeek.freeze(plan, plan.firings().get(0).id());
    Span busy = plan.firings().get(0).times().busy();
    // Asked past ChangeAWeek, which would release it: no week can keep a rule then.
    KilnWork broken = Weeks.kiln("K1", Weeks.weekdays().without(busy));
    List<WeekPlan> refused = new ArrayList<>();

    Optional<InspectedWeek> none =
        new PlanAWeek(frozen.firedIn(List.of(broken)))
            .run(
                new WeekListener() {
                  @Override
                  public void better(InspectedWeek week) {}

                  @Override
                  public void refused(WeekPlan week, List<WeekFinding> findings) {
                    refused.add(week);
                  }
                });

    assertThat(none).isEmpty();
    assertThat(refused.size()).isEqualTo(1);
  }
}
