package shelfful.ui.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Who had the processors so far, as Linux counts it; empty on other systems. The system keeps
 * fifteen letters of a thread's name.
 *
 * @param threads of this program by name: threads of one name together
 * @param own this program, with threads that have ended, in nanoseconds
 * @param machine all programs together, in nanoseconds
 */
record ProcessorTimes(Map<String, Times> threads, long own, long machine) {
  private static final Path OWN = Path.of("/proc/self/task");
  private static final Path ALL = Path.of("/proc/stat");

  /** The system counts the whole machine's time in hundredths of a second. */
  private static final long TICK = 10_000_000;

  /** Of the columns of the machine's times, the idle ones. */
  private static final int IDLE = 3;

  private static final int WAITING = 4;

  /** Less is not worth telling. */
  private static final long LEAST = 3_000_000;

  /**
   * The times of a thread, in nanoseconds.
   *
   * @param work on a processor
   * @param delay ready to work, while others had the processors
   */
  record Times(long work, long delay) {
    static final Times NONE = new Times(0, 0);

    Times plus(Times other) {
      return new Times(work + other.work, delay + other.delay);
    }

    Times since(Times before) {
      return new Times(work - before.work, delay - before.delay);
    }
  }

  /** Until now. */
  static ProcessorTimes now() {
    try {
      return Files.isDirectory(OWN)
          ? new ProcessorTimes(threadTimes(), ownTime(), machineTime())
          : new ProcessorTimes(Map.of(), 0, 0);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static Map<String, Times> threadTimes() throws IOException {
    Map<String, Times> all = new TreeMap<>();
    try (DirectoryStream<Path> threads = Files.newDirectoryStream(OWN)) {
      for (Path thread : threads) {
        try {
          String[] told = Files.readString(thread.resolve("schedstat")).split(" ");
          all.merge(
              Files.readString(thread.resolve("comm")).strip(),
              new Times(Long.parseLong(told[0]), Long.parseLong(told[1])),
              Times::plus);
        } catch (NoSuchFileException ended) {
          continue;
        }
      }
    }
    return all;
  }

  private static long ownTime() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toNanos();
  }

  private static long machineTime() throws IOException {
    String[] columns = Files.readAllLines(ALL).get(0).strip().split(" +");
    long[] ticks = Arrays.stream(columns).skip(1).mapToLong(Long::parseLong).toArray();
    return (Arrays.stream(ticks).limit(8).sum() - ticks[IDLE] - ticks[WAITING]) * TICK;
  }

  ProcessorTimes since(ProcessorTimes before) {
    Map<String, Times> spent = new TreeMap<>(threads);
    spent.replaceAll((name, times) -> times.since(before.threads.getOrDefault(name, Times.NONE)));
    return new ProcessorTimes(spent, own - before.own, machine - before.machine);
  }

  /** What programs beside this one had, in nanoseconds. */
  long others() {
    return Math.max(0, machine - own);
  }

  /** Who worked how long, the longest first. */
  String told() {
    return threads.entrySet().stream()
            .filter(one -> one.getValue().work() > LEAST)
            .sorted(Comparator.comparing(one -> -one.getValue().work()))
            .map(
                one ->
                    String.format(
                        Locale.ROOT,
                        "%s %.0f (waited for it %.0f)",
                        one.getKey(),
                        one.getValue().work() / 1e6,
                        one.getValue().delay() / 1e6))
            .collect(Collectors.joining(", "))
        + String.format(Locale.ROOT, "; other programs %.0f", others() / 1e6);
  }
}
