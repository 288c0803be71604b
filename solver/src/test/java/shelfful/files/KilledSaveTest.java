package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a program that saves without pause, at random moments, and looks at what is left. */
class KilledSaveTest {
  private static final int SIZE = 200_000;
  private static final int FEW = 5;
  private static final int MANY = 200;

  @Test
  void leavesAWholeFileWhenKilled(@TempDir Path folder) throws Exception {
    assertThat(unreadableAfter(FEW, folder)).isZero();
  }

  @Test
  @Tag("slow")
  void leavesAWholeFileEachOfTwoHundredTimes(@TempDir Path folder) throws Exception {
    assertThat(unreadableAfter(MANY, folder)).isZero();
  }

  private static int unreadableAfter(int kills, Path folder)
      throws IOException, InterruptedException {
    SplittableRandom random = new SplittableRandom(7);
    Path file = folder.resolve("studio.json");
    int unreadable = 0;
    for (int i = 0; i < kills; i++) {
      Files.write(file, content('a'));
      Process child =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  KilledSaveTest.class.getName(),
                  file.toString())
              .redirectErrorStream(true)
              .start();
      // The first sign of life: a version other than the first is there.
      while (child.isAlive() && Files.readAllBytes(file)[0] == 'a') {
        Thread.onSpinWait();
      }
      child.waitFor(random.nextInt(1, 60), TimeUnit.MILLISECONDS);
      assertThat(child.isAlive()).as("the program still saves when it is killed").isTrue();
      child.destroyForcibly().waitFor();
      unreadable += isWhole(Files.readAllBytes(file)) ? 0 : 1;
    }
    return unreadable;
  }

  /** Saves one version after another until it is killed. */
  public static void main(String[] arguments) throws SaveFailed {
    for (int i = 1; ; i++) {
      AtomicSave.save(Path.of(arguments[0]), content((char) ('a' + i % 26)));
    }
  }

  private static byte[] content(char letter) {
    return String.valueOf(letter).repeat(SIZE).getBytes(StandardCharsets.US_ASCII);
  }

  private static boolean isWhole(byte[] bytes) {
    if (bytes.length != SIZE) {
      return false;
    }
    for (byte b : bytes) {
      if (b != bytes[0]) {
        return false;
      }
    }
    return true;
  }
}
