package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.fixture.Loads;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;

class UnpackingNoteTest {
  static FiringRecord record() {
    Inspection.Passed passed = (Inspection.Passed) new Inspector().inspect(Loads.roundFull());
    return FiringRecord.of(
        passed.load(), java.time.LocalDate.of(2026, 6, 1), "7K3-QM2", Optional.of(99));
  }

  private static ReadResult<List<PieceResult>> read(String note) {
    return UnpackingNote.read("note.txt", note.getBytes(StandardCharsets.UTF_8), record());
  }

  private static String summed(String body) {
    return body + "sum " + UnpackingLine.sum(body) + "\n";
  }

  @Test
  void readsWhatItWrites() {
    List<PieceResult> results =
        List.of(
            new PieceResult("BK-001", Grade.SECOND, Optional.of("crawled")),
            new PieceResult("MG-001", Grade.LOST, Optional.empty()),
            new PieceResult("VS-001", Grade.GOOD, Optional.empty()));
    assertThat(read(UnpackingNote.write(record(), results)).found()).contains(results);
  }

  @Test
  void theRestIsGoodWhereTheNoteSaysSo() {
    String note =
        summed("shelfful unpacking 1\nplan 7K3-QM2\nBK-001 | lost | cracked\nrest good\n");
    List<PieceResult> results = read(note).found().orElseThrow();
    assertThat(results).hasSize(record().pieces().size());
    assertThat(results.stream().filter(one -> one.grade() == Grade.GOOD))
        .hasSize(record().pieces().size() - 1);
  }

  @Test
  void takesLineBreaksOfEverySystemAndBlanksRoundLines() {
    String note = summed("shelfful unpacking 1\nplan 7K3-QM2\nBK-001 | good\n");
    assertThat(read(note.replace("\n", "\r\n")).found()).isPresent();
    assertThat(read("\n  " + note.replace("\n", "  \n\n")).found()).isPresent();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "ZZ-001 | lost; ZZ-001",
        "BK-001 | splendid; splendid",
        "BK-001 | good | crawled; no cause",
        "BK-001; no result",
        "BK-001 | lost | a | b; no result",
        "BK-001 | lost | \u202eevil; turns text round",
        "=HYPERLINK(1) | lost; HYPERLINK"
      })
  void refusesALineThatSaysNothingSoundAndUsesNothingOfTheNote(String line, String told) {
    String note = summed("shelfful unpacking 1\nplan 7K3-QM2\nMG-001 | good\n" + line + "\n");
    ReadResult<List<PieceResult>> read = read(note);
    assertThat(read.found()).isEmpty();
    assertThat(read.problems().get(0).sentence()).contains("line 4").contains(told);
  }

  @Test
  void refusesAPieceNamedTwice() {
    String note = summed("shelfful unpacking 1\nplan 7K3-QM2\nMG-001 | good\nMG-001 | lost\n");
    assertThat(read(note).problems().get(0).sentence()).contains("named twice");
  }

  @Test
  void refusesHalfANoteAnotherPlanAndWhatIsNoNote() {
    String note = summed("shelfful unpacking 1\nplan 7K3-QM2\nBK-001 | lost\nMG-001 | good\n");
    for (int cut = 1; cut < note.length() - 1; cut++) {
      assertThat(read(note.substring(0, cut)).found()).as("cut at " + cut).isEmpty();
    }
    assertThat(read(note.replace("lost", "good")).problems().get(0).sentence()).contains("sum");
    String other = summed("shelfful unpacking 1\nplan AAA-AAA\nBK-001 | lost\n");
    assertThat(read(other).problems().get(0).sentence()).contains("another plan");
    assertThat(read("<html>").problems().get(0).sentence()).contains("no note");
    assertThat(
            UnpackingNote.read("n", new byte[(1 << 20) + 1], record()).problems().get(0).sentence())
        .contains("larger");
  }
}
