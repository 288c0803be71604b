package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.OpenAList;
import shelfful.app.Opened;
import shelfful.app.SearchLength;
import shelfful.drawing.Spot;
import shelfful.load.Layer;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ui.Screen;
import shelfful.ui.task.FxTaskRunner;

/**
 * Measures how the desk keeps up, and prints the figures. It asserts nothing about time: what a
 * machine does depends on what else it does.
 */
@Tag("slow")
class DeskBenchmarkTest {
  private static final int FRAMES = 300;
  private static final int WARM = 120;

  @TempDir private Path folder;

  @Test
  void framesWhileDraggingOnALayerOfSixtyPieces() throws Exception {
    OpenDesk desk = OpenDesk.atOnce(SearchLength.ofSteps(0), folder);
    desk.run(() -> desk.model.plan(cups("egg-cup,clear-gloss,260")));
    Layer fullest = fullest(desk);
    desk.run(() -> desk.model.chooseLayer(fullest.id()));
    Placement piece = fullest.placements().get(fullest.placements().size() / 2);
    double[] at = desk.pixel(piece.at());
    desk.press(at[0], at[1]);
    desk.drag(at[0] + 6, at[1], false);
    List<Long> intervals = new ArrayList<>();
    List<Long> handling = new ArrayList<>();
    long screen = busy("JavaFX Application Thread");
    long painter = busy("QuantumRenderer");
    drag(desk, piece, intervals, handling);
    screen = busy("JavaFX Application Thread") - screen;
    painter = busy("QuantumRenderer") - painter;
    desk.close();
    System.out.printf(
        Locale.ROOT,
        "Processor time of a frame, whatever else the machine does: %.1f ms on the screen's thread,"
            + " %.1f ms on the painter's%n",
        screen / 1e6 / (WARM + FRAMES),
        painter / 1e6 / (WARM + FRAMES));
    System.out.printf(
        Locale.ROOT,
        "Dragging among %d pieces, software pipeline: frame %s; of it on the screen's thread %s%n",
        fullest.placements().size(),
        figures(intervals),
        figures(handling));
    assertThat(fullest.placements().size()).isGreaterThanOrEqualTo(60);
  }

  private static void drag(
      OpenDesk desk, Placement piece, List<Long> intervals, List<Long> handling)
      throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () ->
            new AnimationTimer() {
              private long before = System.nanoTime();
              private int frame;

              @Override
              public void handle(long pulse) {
                long now = System.nanoTime();
                frame++;
                HandPointer pointer = new HandPointer(desk.model, () -> 2.5);
                Spot axis =
                    desk.model
                        .shown()
                        .get()
                        .orElseThrow()
                        .view(desk.model.layerId().get())
                        .orElseThrow()
                        .at(piece.at());
                double turn = frame / 20.0;
                Spot there =
                    new Spot(axis.x() + 40 * Math.cos(turn), axis.y() + 40 * Math.sin(turn));
                pointer.drag(there, false);
                if (frame > WARM) {
                  intervals.add(now - before);
                  handling.add(System.nanoTime() - now);
                }
                before = now;
                if (frame == WARM + FRAMES) {
                  stop();
                  done.countDown();
                }
              }
            }.start());
    done.await();
  }

  @Test
  void theScreensThreadWhilePlanning() throws Exception {
    OpenDesk desk =
        OpenDesk.open(new FxTaskRunner(), SearchLength.ofTime(Duration.ofSeconds(40)), folder);
    String list = Files.readString(Path.of("../demo-data/list-200.csv"));
    LoadRequest request = request(list);
    AtomicLong worst = new AtomicLong();
    List<Long> waits = new ArrayList<>();
    List<Long> work = new ArrayList<>();
    desk.run(() -> desk.model.plan(request));
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
    while (System.nanoTime() < end) {
      long asked = System.nanoTime();
      long busy = busy("JavaFX Application Thread");
      CountDownLatch answered = new CountDownLatch(1);
      Platform.runLater(answered::countDown);
      answered.await();
      long wait = System.nanoTime() - asked;
      waits.add(wait);
      work.add(busy("JavaFX Application Thread") - busy);
      worst.accumulateAndGet(wait, Math::max);
      Thread.sleep(10);
    }
    long stopped = System.nanoTime();
    desk.run(desk.model::stop);
    while (Screen.on(() -> desk.model.planning().get())) {
      Thread.sleep(5);
    }
    long answer = System.nanoTime() - stopped;
    System.out.printf(
        Locale.ROOT,
        "Planning 200 pieces: the screen's thread answered after %s; of it at work %s; Stop after %d ms; %s%n",
        figures(waits),
        figures(work),
        TimeUnit.NANOSECONDS.toMillis(answer),
        desk.model.state().get());
    desk.close();
    assertThat(desk.model.shown().get()).isPresent();
  }

  /** The processor time of a thread so far, in nanoseconds. */
  private static long busy(String name) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
      if (thread != null && thread.getThreadName().startsWith(name)) {
        return threads.getThreadCpuTime(thread.getThreadId());
      }
    }
    return 0;
  }

  private static String figures(List<Long> nanos) {
    List<Long> sorted = nanos.stream().sorted().toList();
    return String.format(
        Locale.ROOT,
        "%.1f ms median, %.1f ms of a hundred 99, %.1f ms worst (%d)",
        sorted.get(sorted.size() / 2) / 1e6,
        sorted.get(sorted.size() * 99 / 100) / 1e6,
        sorted.get(sorted.size() - 1) / 1e6,
        sorted.size());
  }

  private static Layer fullest(OpenDesk desk) {
    return desk.model.work().plan().get().orElseThrow().load().layers().stream()
        .max((a, b) -> Integer.compare(a.placements().size(), b.placements().size()))
        .orElseThrow();
  }

  private static LoadRequest cups(String row) {
    return request("form,glaze,quantity,stage\n" + row + ",glazed\n");
  }

  private static LoadRequest request(String list) {
    try {
      Opened<LoadRequest> opened =
          OpenAList.open(
              new OpenAList.Document(
                  "studio.json", Files.readAllBytes(Path.of("../demo-data/studio.json"))),
              new OpenAList.Document("list.csv", list.getBytes(StandardCharsets.UTF_8)),
              LocalDate.of(2026, 6, 1));
      return ((Opened.Ready<LoadRequest>) opened).value();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
