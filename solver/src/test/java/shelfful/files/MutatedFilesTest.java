package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.measure.ConeText;
import shelfful.measure.LengthText;
import shelfful.measure.MassText;
import shelfful.studio.Studio;

/**
 * Damages good files at random, with a seed: a reader answers every one with a value or with
 * problems.
 */
class MutatedFilesTest {
  private static final int FEW = 1_000;
  private static final int MANY = 100_000;

  private static final List<String> SPLICES =
      List.of(
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ";",
          ":",
          "\n",
          "\r",
          "\t",
          "\0",
          "-",
          "1e999",
          "e9999999999",
          "NaN",
          "null",
          "true",
          "\ufeff",
          "\u202e",
          "\ud83c",
          "\\u0000",
          "\\",
          "'",
          "=",
          "0",
          "99999999999999999999",
          "-1",
          "\"\"",
          "{}",
          "[]",
          "\u00e9");

  @Test
  void readersAnswerEveryDamagedFile() throws IOException {
    damage(FEW);
  }

  @Test
  @Tag("slow")
  void readersAnswerAHundredThousandDamagedFiles() throws IOException {
    damage(MANY);
  }

  private static void damage(int times) throws IOException {
    Studio studio = SmallStudio.studio();
    Studio demo = SmallStudio.demo();
    byte[] small = Files.readAllBytes(SmallStudio.FILE);
    byte[] every = Files.readAllBytes(SmallStudio.FILE.resolveSibling("every-shape-studio.json"));
    byte[] table = Files.readAllBytes(SmallStudio.DEMO.resolve("list-60.csv"));
    byte[] plan = PlanWriter.bytes(SmallPlan.inspected());
    byte[] list =
        "{\"format\": \"shelfful batch list\", \"version\": 1, \"batches\": [{\"id\": \"B\", \"form\": \"cup\", \"quantity\": 2}]}"
            .getBytes(StandardCharsets.UTF_8);

    answers(small, times, bytes -> StudioReader.read("a.json", bytes));
    answers(every, times, bytes -> StudioReader.read("a.json", bytes));
    answers(table, times, bytes -> BatchListReader.read("a.csv", bytes, demo));
    answers(list, times, bytes -> BatchListReader.read("a.json", bytes, studio));
    answers(plan, times / 4, bytes -> PlanReader.read("a.json", bytes));
  }

  private static void answers(byte[] good, int times, Function<byte[], ReadResult<?>> reader) {
    assertThat(reader.apply(good).problems()).isEmpty();
    int refused = 0;
    for (int seed = 0; seed < times; seed++) {
      byte[] damaged = damaged(good, new SplittableRandom(seed));
      ReadResult<?> result;
      try {
        result = reader.apply(damaged);
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + " made a reader throw", e);
      }
      refused += result.found().isEmpty() ? 1 : 0;
      assertThat(result.found().isPresent() || !result.problems().isEmpty()).isTrue();
      assertThat(result.problems())
          .allSatisfy(
              problem ->
                  assertThat(problem.sentence()).doesNotContain("Exception").hasSizeLessThan(600));
    }
    assertThat(refused).as("damage is noticed").isGreaterThan(times / 10);
  }

  private static byte[] damaged(byte[] good, SplittableRandom random) {
    byte[] bytes = good;
    int cuts = random.nextInt(1, 4);
    for (int i = 0; i < cuts; i++) {
      int at = random.nextInt(bytes.length);
      int to = Math.min(bytes.length, at + random.nextInt(1, 40));
      byte[] splice = SPLICES.get(random.nextInt(SPLICES.size())).getBytes(StandardCharsets.UTF_8);
      bytes =
          switch (random.nextInt(5)) {
            case 0 ->
                joined(
                    Arrays.copyOf(bytes, at), splice, Arrays.copyOfRange(bytes, at, bytes.length));
            case 1 ->
                joined(
                    Arrays.copyOf(bytes, at), splice, Arrays.copyOfRange(bytes, to, bytes.length));
            case 2 ->
                joined(
                    Arrays.copyOf(bytes, to), Arrays.copyOfRange(bytes, at, bytes.length), splice);
            case 3 -> flipped(bytes, at, random);
            default ->
                joined(
                    Arrays.copyOf(bytes, at),
                    new byte[to - at],
                    Arrays.copyOfRange(bytes, to, bytes.length));
          };
    }
    return bytes;
  }

  private static byte[] flipped(byte[] bytes, int at, SplittableRandom random) {
    byte[] copy = bytes.clone();
    copy[at] ^= (byte) (1 << random.nextInt(8));
    return copy;
  }

  private static byte[] joined(byte[] a, byte[] b, byte[] c) {
    byte[] all = Arrays.copyOf(a, a.length + b.length + c.length);
    System.arraycopy(b, 0, all, a.length, b.length);
    System.arraycopy(c, 0, all, a.length + b.length, c.length);
    return all;
  }

  @Test
  void textsOfLengthsMassesAndConesAreAnswered() {
    String signs = "0123456789.,/- +\"\u2033mcingklb\u0660\uff11\u00bd\ud83c\0\n'eENax";
    SplittableRandom random = new SplittableRandom(1);
    int understood = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(12);
      for (int j = 0; j < length; j++) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      understood += LengthText.readWithUnit(text.toString()).value().isPresent() ? 1 : 0;
      understood += MassText.read(text.toString()).value().isPresent() ? 1 : 0;
      understood += ConeText.read(text.toString()).value().isPresent() ? 1 : 0;
    }
    assertThat(understood).isBetween(10, 20_000);
  }
}
