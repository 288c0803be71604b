package shelfful.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** What the figures were measured with. */
final class Machine {
  private Machine() {}

  /** Commit, Java, processors and heap, and that times are noisy. */
  static String heading() {
    Runtime runtime = Runtime.getRuntime();
    return "Commit "
        + commit()
        + ", Java "
        + System.getProperty("java.version")
        + ", "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.arch")
        + ", "
        + runtime.availableProcessors()
        + " processors, heap at most "
        + (runtime.maxMemory() >> 20)
        + " MB.\nTimes, and what a run ended by time finds, vary with the machine and with what"
        + " else it does.";
  }

  private static String commit() {
    try {
      Process git = new ProcessBuilder("git", "rev-parse", "--short", "HEAD").start();
      String name = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return name.isBlank() ? "unknown" : name.strip();
    } catch (IOException noGit) {
      return "unknown";
    }
  }
}
