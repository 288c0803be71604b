package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.LoadLimit;
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
  private static final int FRAMES = 400;

  private static final long WATCHED = 30_000;
  private static final long REHEARSAL = 8000;

  /** Frames before the piece is taken up and after it is set down. */
  private static final int STILL = 20;

  @TempDir private Path folder;

  /** The time between frames from before a piece is taken up until after it is set down. */
  @Test
  void framesWhileDraggingOnALayerOfSixtyPieces() throws Exception {
    OpenDesk desk = OpenDesk.open(new FxTaskRunner(), SearchLength.ofSteps(0), folder);
    rehearsed(desk);
    desk.run(() -> desk.model.plan(cups("egg-cup,clear-gloss,260")));
    await(desk);
    Layer fullest = fullest(desk);
    desk.run(() -> desk.model.chooseLayer(fullest.id()));
    Placement piece = fullest.placements().get(fullest.placements().size() / 2);
    for (String run : List.of("first", "second")) {
      Thread.sleep(1000);
      long screen = busy("JavaFX Application Thread");
      long painter = busy("QuantumRenderer");
      Frames frames = new Frames(desk.model, piece);
      Platform.runLater(frames::start);
      frames.done.await();
      screen = busy("JavaFX Application Thread") - screen;
      painter = busy("QuantumRenderer") - painter;
      System.out.printf(
          Locale.ROOT,
          "Dragging among %d pieces, software pipeline, %s time in the program:%n  frame %s;"
              + "%n  of it on the screen's thread %s;%n  the longest %s;%n"
              + "  processor time of a frame %.1f ms on the screen's thread, %.1f ms on the"
              + " painter's%n",
          fullest.placements().size(),
          run,
          figures(frames.intervals),
          figures(frames.handling),
          frames.longest(),
          screen / 1e6 / FRAMES,
          painter / 1e6 / FRAMES);
    }
    desk.close();
    assertThat(fullest.placements().size()).isGreaterThanOrEqualTo(60);
  }

  private static void await(OpenDesk desk) throws InterruptedException {
    while (Screen.on(() -> desk.model.planning().get() || desk.model.shown().get().isEmpty())) {
      Thread.sleep(5);
    }
  }

  /** A piece taken up, led in a circle and set down, a little each frame. */
  private static final class Frames extends AnimationTimer {
    private final List<Long> intervals = new ArrayList<>();
    private final List<Long> handling = new ArrayList<>();
    private final CountDownLatch done = new CountDownLatch(1);
    private final DeskViewModel desk;
    private final HandPointer pointer;
    private final Spot axis;
    private long before;
    private int frame;

    Frames(DeskViewModel desk, Placement piece) {
      this.desk = desk;
      this.pointer = new HandPointer(desk, () -> 2.5);
      Placement now = desk.work().plan().get().orElseThrow().placement(piece.pieceId()).get();
      this.axis =
          desk.shown().get().orElseThrow().view(desk.layerId().get()).orElseThrow().at(now.at());
    }

    @Override
    public void handle(long pulse) {
      long now = System.nanoTime();
      frame++;
      if (frame == STILL) {
        pointer.press(axis);
      } else if (frame > STILL && frame < FRAMES - STILL) {
        double turn = (frame - STILL) / 20.0;
        double reach = Math.min(40, frame - STILL);
        pointer.drag(
            new Spot(axis.x() + reach * Math.cos(turn), axis.y() + reach * Math.sin(turn)), false);
      } else if (frame == FRAMES - STILL) {
        pointer.drop();
        desk.commands().undo();
      }
      handling.add(System.nanoTime() - now);
      if (before > 0) {
        intervals.add(now - before);
      }
      before = now;
      if (frame == FRAMES) {
        stop();
        done.countDown();
      }
    }

    /** The five longest frames with their numbers. */
    String longest() {
      return IntStream.range(0, intervals.size())
          .boxed()
          .sorted(Comparator.comparing((Integer at) -> -intervals.get(at)))
          .limit(5)
          .map(at -> String.format(Locale.ROOT, "no. %d %.1f ms", at + 2, intervals.get(at) / 1e6))
          .collect(Collectors.joining(", "));
    }
  }

  @Test
  void theScreensThreadWhilePlanning() throws Exception {
    OpenDesk desk =
        OpenDesk.open(new FxTaskRunner(), SearchLength.ofTime(Duration.ofSeconds(40)), folder);
    String list = Files.readString(Path.of("../demo-data/list-200.csv"));
    LoadRequest request = request(list);
    desk.run(() -> desk.model.boundedBy(one -> OptionalInt.of(LoadLimit.of(one).pieces())));
    rehearsed(desk);
    long collected = collected();
    long begun = System.nanoTime();
    AtomicLong first = new AtomicLong();
    desk.run(
        () -> {
          desk.model
              .shown()
              .addListener(
                  (property, was, is) -> first.compareAndSet(0, System.nanoTime() - begun));
          desk.model.plan(request);
        });
    ScreenWatch watch = new ScreenWatch();
    watch.watch(WATCHED);
    long stopped = System.nanoTime();
    desk.run(desk.model::stop);
    while (Screen.on(() -> desk.model.planning().get())) {
      Thread.sleep(5);
    }
    long answer = System.nanoTime() - stopped;
    System.out.printf(
        Locale.ROOT,
        "Planning 200 pieces: the first plan was on the desk after %d ms; the screen's thread"
            + " answered after %s; a thread that only sleeps overslept %s; Stop after %d ms; %s%n"
            + "  collecting took %d ms in all; other programs had %.0f %% of the work;"
            + " the waits over 100 ms:%n  %s%n",
        TimeUnit.NANOSECONDS.toMillis(first.get()),
        figures(watch.waits()),
        figures(watch.oversleeps()),
        TimeUnit.NANOSECONDS.toMillis(answer),
        desk.model.state().get(),
        collected() - collected,
        100 * watch.othersShare(),
        String.join("\n  ", watch.told()));
    desk.close();
    assertThat(desk.model.shown().get()).isPresent();
  }

  /** As after some seconds before the first screen. */
  private static void rehearsed(OpenDesk desk) throws InterruptedException {
    desk.run(desk.window::rehearse);
    Thread.sleep(REHEARSAL);
  }

  private static long collected() {
    return ManagementFactory.getGarbageCollectorMXBeans().stream()
        .mapToLong(GarbageCollectorMXBean::getCollectionTime)
        .sum();
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
