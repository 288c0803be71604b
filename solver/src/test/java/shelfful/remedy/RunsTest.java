package shelfful.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import shelfful.app.PlanListener;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;

/** A search that is stopped begins nothing more, whatever it was at. */
class RunsTest {
  private static final RemedyEffort EFFORT = new RemedyEffort(1, 1, 1, true);

  private final Runs runs = new Runs();

  private static InspectedLoad oneBeakerOfThree() {
    LoadDraft draft =
        new LoadDraft(
                Studios.studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("BK", "beaker", "chalk", 3))
            .level("F", "1in")
            .place("F1", "BK-001", 0, 0, 0);
    return ((Inspection.Passed) new Inspector().inspect(draft.load())).load();
  }

  private WaitingCase waiting() {
    InspectedLoad start = oneBeakerOfThree();
    return new WaitingCase(start, WaitingGroup.of(start.load()).get(0), EFFORT, runs);
  }

  /** Goes on until it is stopped. */
  private static final class Endless implements Planning {
    private final CountDownLatch end = new CountDownLatch(1);

    @Override
    public Optional<InspectedLoad> run(SearchLength length, PlanListener listener) {
      try {
        end.await();
      } catch (InterruptedException late) {
        throw new AssertionError("The run was not ended", late);
      }
      return Optional.empty();
    }

    @Override
    public void stop() {
      end.countDown();
    }
  }

  /** Two threads meet again and again, so that some stops fall between any two steps of a run. */
  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aStopEndsTheRunWheneverItComes() throws Exception {
    for (int time = 0; time < 2000; time++) {
      Runs met = new Runs();
      CyclicBarrier both = new CyclicBarrier(2);
      Thread stopper =
          new Thread(
              () -> {
                meet(both);
                met.stop();
              });
      stopper.start();
      meet(both);
      assertThat(met.run(new Endless(), 1)).isEmpty();
      stopper.join();
    }
  }

  private static void meet(CyclicBarrier both) {
    try {
      both.await();
    } catch (Exception broken) {
      throw new AssertionError(broken);
    }
  }

  @Test
  void theNextFiringIsNotPlannedAfterAStop() {
    WaitingCase one = waiting();
    NextFirings next = new NextFirings(one.load(), List.of(one.group()), EFFORT, runs);
    assertThat(next.alone(one.request().firing(), one)).isPresent();
    runs.stop();
    assertThat(next.together(one.request().firing())).isEmpty();
    assertThat(next.alone(one.request().firing(), one)).isEmpty();
  }

  @Test
  void freePlacesAreNotFilledAfterAStop() {
    assertThat(waiting().plan().filledUp()).isPresent();
    runs.stop();
    assertThat(waiting().plan().filledUp()).isEmpty();
  }

  @Test
  void whatWasCutShortIsNotToldAsTriedInVain() {
    RemedySearch search = new RemedySearch(oneBeakerOfThree(), EFFORT);
    search.stop();
    Explanation cut = search.explain(search.groups().get(0));
    assertThat(cut.cutShort()).isTrue();
    assertThat(cut.trials()).isEmpty();
    assertThat(cut.inVain()).isEqualTo("Stopped before everything was tried.");
    assertThat(search.explain(one -> {})).isEmpty();
    RemedySearch whole = new RemedySearch(oneBeakerOfThree(), EFFORT);
    assertThat(whole.explain(whole.groups().get(0)).cutShort()).isFalse();
  }

  @Test
  void whatWasTriedBeforeTheStopIsTold() {
    Explanation cut =
        new Explanation(
            waiting().group(),
            List.of(new Trial(RemedyKind.AS_IT_STANDS, Optional.empty(), 2, "")),
            true);
    assertThat(cut.inVain())
        .isEqualTo(
            "Stopped before everything was tried. Tried in vain: put in beside the rest (2 tries).");
  }
}
