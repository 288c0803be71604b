package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.app.WeekComparison.Figures;
import shelfful.fixture.Weeks;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.ware.Stage;
import shelfful.week.WeekEffort;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** Planning until a time, where two threads share loads, room and the best week. */
class SideBySideTest {
  private static final int LOADS = 120;

  private static WeekRequest request() {
    return Weeks.week(
            14,
            List.of(Weeks.kiln("K1", Weeks.weekdays()), Weeks.kiln("K2", Weeks.weekdays())),
            List.of(
                Weeks.ware("A", "basin", 9, Stage.BONE_DRY, "2026-06-12"),
                Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-05"),
                Weeks.ware("C", "tower", 2, Stage.GLAZED, "2026-06-09")))
        .with(new WeekEffort(3, 0, 4));
  }

  private static Optional<InspectedLoad> really(LoadRequest load) {
    return new PlanALoad(load).run(SearchLength.ofSteps(load.steps()), PlanListener.none());
  }

  /** Plans until so many loads were asked for or so many rounds were begun. */
  private static WeekPlan plan(LoadSource source, List<WeekPlan> told) {
    AtomicInteger asked = new AtomicInteger();
    LoadSource counting =
        load -> {
          asked.incrementAndGet();
          return source.plan(load);
        };
    AtomicInteger questions = new AtomicInteger();
    return new WeekPlanner(request(), counting)
        .planUntil(
            () -> asked.get() >= LOADS || questions.incrementAndGet() > 50 * LOADS, told::add);
  }

  @Test
  void everyWeekToldPassesTheJudgeAndIsNoWorseThanTheOneBefore() {
    List<WeekPlan> told = new ArrayList<>();

    WeekPlan last = plan(SideBySideTest::really, told);

    assertThat(told).isNotEmpty();
    assertThat(last).isSameAs(told.get(told.size() - 1));
    for (WeekPlan week : told) {
      assertThat(new WeekInspector().inspect(week)).isInstanceOf(WeekInspection.Passed.class);
    }
    for (int i = 1; i < told.size(); i++) {
      assertThat(order(told.get(i))).isLessThanOrEqualTo(order(told.get(i - 1)));
    }
  }

  /** Days late, then what waits, then firings; none of the three reaches a thousand here. */
  private static long order(WeekPlan week) {
    Figures figures = Figures.of(week);
    return (figures.lateDays() * 1000 + figures.waiting()) * 1000 + figures.firings();
  }

  @Test
  void weeksAreToldOnTheThreadThatAsked() {
    Thread here = Thread.currentThread();
    List<Thread> threads = new ArrayList<>();

    new WeekPlanner(request(), SideBySideTest::really)
        .planUntil(() -> true, week -> threads.add(Thread.currentThread()));

    assertThat(threads).isNotEmpty().containsOnly(here);
  }

  @Test
  void noLoadIsPlannedTwice() {
    Set<List<Object>> seen = ConcurrentHashMap.newKeySet();
    List<List<Object>> again = new java.util.concurrent.CopyOnWriteArrayList<>();
    LoadSource noting =
        load -> {
          List<Object> question = List.of(load.batches(), load.firing(), load.steps());
          if (!seen.add(question)) {
            again.add(question);
          }
          return really(load);
        };

    plan(noting, new ArrayList<>());

    assertThat(seen).hasSizeGreaterThan(4);
    assertThat(again).isEmpty();
  }

  @Test
  @Timeout(120)
  void twoLoadsArePlannedAtOnce() {
    CountDownLatch two = new CountDownLatch(2);
    Set<Thread> threads = ConcurrentHashMap.newKeySet();
    List<Boolean> met = new java.util.concurrent.CopyOnWriteArrayList<>();
    LoadSource waiting =
        load -> {
          if (threads.add(Thread.currentThread())) {
            two.countDown();
            met.add(meets(two));
          }
          return really(load);
        };

    plan(waiting, new ArrayList<>());

    assertThat(met).containsExactly(true, true);
  }

  private static boolean meets(CountDownLatch other) {
    try {
      return other.await(50, TimeUnit.SECONDS);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Test
  @Timeout(120)
  void aFaultOfOneEndsBothAndIsTold() {
    AtomicInteger loads = new AtomicInteger();
    LoadSource faulty =
        load -> {
          if (loads.incrementAndGet() == 7) {
            throw new IllegalArgumentException("the seventh load");
          }
          return really(load);
        };

    assertThatThrownBy(() -> new WeekPlanner(request(), faulty).planUntil(() -> false, week -> {}))
        .hasStackTraceContaining("the seventh load");
  }

  @Test
  void theFirstWeekIsFinishedThoughTheTimeIsOver() {
    WeekPlan week =
        new WeekPlanner(request(), SideBySideTest::really).planUntil(() -> true, told -> {});

    assertThat(week.waiting()).isEmpty();
    assertThat(week.firings()).isNotEmpty();
  }
}
