package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;

class PlanALoadTest {
  private static LoadRequest request() throws IOException {
    Path data = Path.of("../demo-data");
    Opened<LoadRequest> opened =
        OpenAList.open(
            new OpenAList.Document("studio.json", Files.readAllBytes(data.resolve("studio.json"))),
            new OpenAList.Document("list.csv", Files.readAllBytes(data.resolve("list-60.csv"))),
            LocalDate.of(2026, 6, 1));
    return ((Opened.Ready<LoadRequest>) opened).value();
  }

  /** Held up for a moment now and then, as by a screen that is behind. */
  private static class HoldingUp implements PlanListener {
    private final Set<String> threads = ConcurrentHashMap.newKeySet();

    Set<String> threads() {
      return threads;
    }

    @Override
    public void better(InspectedLoad load) {}

    @Override
    public void betweenSteps() {
      threads.add(Thread.currentThread().getName());
      Thread.yield();
    }
  }

  @Test
  void aPlanInStepsIsTheSameWhenItWasHeldUp() throws IOException {
    HoldingUp listener = new HoldingUp();
    SearchLength length = SearchLength.ofSteps(3);
    InspectedLoad held = new PlanALoad(request()).run(length, listener).orElseThrow();
    InspectedLoad free = new PlanALoad(request()).run(length, PlanListener.none()).orElseThrow();
    assertThat(listener.threads()).as("threads held up").isNotEmpty();
    assertThat(held.load()).isEqualTo(free.load());
  }

  @Test
  void everyThreadThatPlansIsHeldUp() throws IOException {
    PlanALoad planning = new PlanALoad(request());
    HoldingUp listener =
        new HoldingUp() {
          @Override
          public void betweenSteps() {
            super.betweenSteps();
            if (threads().size() > 1) {
              planning.stop();
            }
          }
        };
    planning.run(SearchLength.ofTime(Duration.ofMinutes(5)), listener);
    assertThat(listener.threads()).contains(Thread.currentThread().getName(), "planning");
  }
}
