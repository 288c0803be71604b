package shelfful.ui.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.app.BatchLines;
import shelfful.ui.DemoStudio;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

/**
 * One list as different programs would write it: signs between cells, decimal signs, encodings and
 * ends of lines in every combination. Each is read right or refused with the reason.
 */
class ListsFromManyProgramsTest {
  private static final String ORDER = "Töpfe für Zürich";

  @TempDir private Path folder;

  private final BatchListViewModel model =
      new BatchListViewModel(Words.english(), DemoStudio.studio(), new Steps());

  /** How a program writes a list. */
  private record Writing(String delimiter, String decimal, Encoding encoding, String end) {

    byte[] bytes() {
      String count = "12" + decimal + "5";
      String quoted = delimiter.equals(",") && decimal.equals(",") ? '"' + count + '"' : count;
      return encoding.bytes(
          String.join(
                  end,
                  String.join(delimiter, "batch", "form", "quantity", "glaze", "order"),
                  String.join(delimiter, "B1", "mug", "12", "clear-gloss", ORDER),
                  String.join(delimiter, "B2", "mug", quoted, "clear-gloss", "second"),
                  String.join(delimiter, "B3", "espresso-cup", "7", "tin-white", "third"))
              + end);
    }

    @Override
    public String toString() {
      return (delimiter + " " + decimal + " " + encoding + " " + end)
          .replace("\t", "tab")
          .replace("\r", "CR")
          .replace("\n", "LF");
    }
  }

  private enum Encoding {
    UTF_8(StandardCharsets.UTF_8),
    UTF_8_MARKED(StandardCharsets.UTF_8, 0xef, 0xbb, 0xbf),
    UTF_16_LE_MARKED(StandardCharsets.UTF_16LE, 0xff, 0xfe),
    UTF_16_BE_MARKED(StandardCharsets.UTF_16BE, 0xfe, 0xff),
    UTF_16_LE(StandardCharsets.UTF_16LE),
    WINDOWS_1252(Charset.forName("windows-1252"));

    private final Charset charset;
    private final int[] mark;

    Encoding(Charset charset, int... mark) {
      this.charset = charset;
      this.mark = mark;
    }

    byte[] bytes(String text) {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      for (int one : mark) {
        all.write(one);
      }
      all.writeBytes(text.getBytes(charset));
      return all.toByteArray();
    }

    boolean isRead() {
      return this != WINDOWS_1252 && this != UTF_16_LE;
    }
  }

  static Stream<Writing> writings() {
    return Stream.of(",", ";", "\t")
        .flatMap(
            delimiter ->
                Stream.of(".", ",")
                    .flatMap(
                        decimal ->
                            Stream.of(Encoding.values())
                                .flatMap(
                                    encoding ->
                                        Stream.of("\r\n", "\n", "\r")
                                            .map(
                                                end ->
                                                    new Writing(
                                                        delimiter, decimal, encoding, end)))));
  }

  @ParameterizedTest
  @MethodSource("writings")
  void isReadRightOrRefusedWithTheReason(Writing writing) throws IOException {
    assertThat(model.open(Files.write(folder.resolve("list.csv"), writing.bytes()))).isEmpty();
    List<List<String>> rows = model.lines().stream().map(BatchLines.Line::cells).toList();
    if (!writing.encoding().isRead()) {
      assertThat(rows).isEmpty();
      assertThat(model.message().get()).contains("list.csv").contains("UTF-8");
      return;
    }
    assertThat(rows).hasSize(3);
    assertThat(model.batches()).extracting(batch -> batch.quantity()).containsExactly(12, 7);
    assertThat(rows.get(0)).contains(ORDER);
    assertThat(model.lines().get(1).batch()).as("12.5 pots are none, and not 125").isEmpty();
    assertThat(model.faults(9))
        .singleElement()
        .asString()
        .contains("Row 2")
        .contains("12" + writing.decimal() + "5");
  }
}
