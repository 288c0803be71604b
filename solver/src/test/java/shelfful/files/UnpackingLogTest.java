package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.record.Grade;
import shelfful.record.PieceResult;

/** Whatever happens to the end of the file, all else in it stays readable. */
class UnpackingLogTest {
  @TempDir private Path folder;

  private static PieceResult result(int number) {
    return number % 2 == 0
        ? new PieceResult("Bö-00" + number, Grade.GOOD, Optional.empty())
        : new PieceResult("Bö-00" + number, Grade.SECOND, Optional.of("gerissen, größer \"x\""));
  }

  private static List<PieceResult> results(int from, int to) {
    List<PieceResult> results = new ArrayList<>();
    for (int number = from; number < to; number++) {
      results.add(result(number));
    }
    return results;
  }

  @Test
  void keepsWhatIsAdded() throws SaveFailed {
    Path file = folder.resolve("a.unpacking.jsonl");
    UnpackingLog.append(results(0, 3), file);
    UnpackingLog.append(results(3, 5), file);
    ReadResult<List<PieceResult>> read = UnpackingLog.read(file);
    assertThat(read.problems()).isEmpty();
    assertThat(read.found()).contains(results(0, 5));
  }

  @Test
  void addsNothingThatCouldNotBeReadBack() throws SaveFailed, IOException {
    Path file = folder.resolve("a.unpacking.jsonl");
    UnpackingLog.append(results(0, 3), file);
    byte[] before = Files.readAllBytes(file);
    PieceResult unreadable = new PieceResult("P-1", Grade.LOST, Optional.of("c".repeat(81)));
    assertThatThrownBy(() -> UnpackingLog.append(List.of(result(3), unreadable), file))
        .isInstanceOf(SaveFailed.class)
        .hasMessageContainingAll("a.unpacking.jsonl", "P-1", "cause", "at most 80");
    assertThat(file).hasBinaryContent(before);
  }

  /** Torn at every byte of the last three entries, then added to. */
  @Test
  void losesNoOtherEntryWhereverItIsTorn() throws SaveFailed, IOException {
    Path whole = folder.resolve("whole.jsonl");
    UnpackingLog.append(results(0, 6), whole);
    byte[] bytes = Files.readAllBytes(whole);
    List<Integer> ends = ends(bytes);
    int torn = 0;
    for (int cut = ends.get(2); cut <= bytes.length; cut++) {
      Path file = folder.resolve("torn.jsonl");
      Files.write(file, Arrays.copyOf(bytes, cut));
      UnpackingLog.append(results(6, 8), file);

      List<PieceResult> read = UnpackingLog.read(file).found().orElseThrow();
      int end = cut;
      long wholeLines = ends.stream().filter(one -> one - 1 <= end).count();
      List<PieceResult> expected = new ArrayList<>(results(0, (int) wholeLines));
      expected.addAll(results(6, 8));
      assertThat(read).as("cut at byte " + cut).isEqualTo(expected);
      torn += UnpackingLog.read(file).problems().isEmpty() ? 0 : 1;
    }
    assertThat(torn).as("cuts in the middle of a line, all told").isGreaterThan(100);
  }

  /** Where each line ends, its line break counted. */
  private static List<Integer> ends(byte[] bytes) {
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        ends.add(i + 1);
      }
    }
    return ends;
  }

  /** Every single byte of the middle entry turned into every bit pattern next to it. */
  @Test
  void passesOverAnEntryThatWasChanged() throws SaveFailed, IOException {
    Path file = folder.resolve("changed.jsonl");
    UnpackingLog.append(results(0, 3), file);
    byte[] bytes = Files.readAllBytes(file);
    List<Integer> ends = ends(bytes);
    for (int at = ends.get(0); at < ends.get(1) - 1; at++) {
      byte[] changed = bytes.clone();
      changed[at] ^= 1;
      Files.write(file, changed);
      ReadResult<List<PieceResult>> read = UnpackingLog.read(file);
      assertThat(read.found().orElseThrow()).as("byte " + at).contains(result(0), result(2));
      assertThat(read.found().orElseThrow()).as("byte " + at).doesNotContain(result(1));
      assertThat(read.problems()).as("byte " + at).isNotEmpty();
    }
  }

  @Test
  void aFileThatIsNotThereHoldsNothing() {
    assertThat(UnpackingLog.read(folder.resolve("none.jsonl")).found()).contains(List.of());
  }

  @Test
  void refusesWhatIsNoResultThoughItsSumAgrees() throws IOException {
    Path file = folder.resolve("odd.jsonl");
    String body = "{\"piece\":\"B-001\",\"grade\":\"splendid\"";
    Files.writeString(
        file, body + ",\"crc\":\"" + UnpackingLine.sum(body) + "\"}\n", StandardCharsets.UTF_8);
    ReadResult<List<PieceResult>> read = UnpackingLog.read(file);
    assertThat(read.found()).contains(List.of());
    assertThat(read.problems().get(0).sentence()).contains("line 1").contains("splendid");
  }
}
