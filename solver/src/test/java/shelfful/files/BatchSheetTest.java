package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

class BatchSheetTest {
  private final Studio studio = SmallStudio.demo();

  private List<Batch> demoList() {
    String text = "batch,form,quantity,glaze,must_go\nA,mug,3,clear-gloss,yes\nB,bottle,2,,\n";
    return BatchListReader.read("a.csv", text.getBytes(StandardCharsets.UTF_8), studio)
        .found()
        .orElseThrow();
  }

  @Test
  void cellsOfABatchMakeTheSameBatchAgain() {
    List<Batch> list = demoList();
    List<List<String>> rows = list.stream().map(BatchSheet::cells).toList();
    assertThat(BatchSheet.read(rows, studio).stream().flatMap(one -> one.batch().stream()))
        .isEqualTo(list);
  }

  @Test
  void everyRowIsReadHoweverManyAreWrongAndEachKnowsItsOwnFaults() {
    List<String> empty = Collections.nCopies(BatchSheet.headings().size(), "");
    List<List<String>> rows = new ArrayList<>(Collections.nCopies(150, empty));
    rows.add(BatchSheet.cells(demoList().get(0)));
    List<BatchSheet.Line> lines = BatchSheet.read(rows, studio);
    assertThat(lines.subList(0, 150)).allMatch(line -> line.problems().size() == 2);
    assertThat(lines.get(149).problems().get(0).where()).startsWith("line 150");
    assertThat(lines.get(150).batch()).contains(demoList().get(0));
  }

  @Test
  void anIdThatIsTakenIsNotedAtTheSecondRowAlone() {
    List<String> cells = BatchSheet.cells(demoList().get(0));
    List<BatchSheet.Line> lines = BatchSheet.read(List.of(cells, cells), studio);
    assertThat(lines.get(0).batch()).isPresent();
    assertThat(lines.get(1).batch()).isEmpty();
    assertThat(lines.get(1).problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("batch");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mug;3;1,5 | ;",
        "mug,3,x | ,",
        "form;quantity | ;",
        "'sep=;' | ;",
        "form,quantity,note;x | ,",
        "mug | ,"
      })
  void theSignBetweenCellsIsTheOneTheHeaderShowsOrEveryLineHas(String line, char sign) {
    assertThat(TableText.delimiter(line + "\n" + line + "\n")).isEqualTo(sign);
  }

  @Test
  void aTabOnTheClipboardWinsOverEveryOtherSign() {
    assertThat(TableText.delimiter("a,b;c\td\n1,2;3\t4")).isEqualTo('\t');
  }

  @Test
  void rowsKeepTheLineTheyBeginOn() {
    assertThat(TableText.rows("a,b\n\n\"two\nlines\",c\nd,e\n", ',').found().orElseThrow())
        .extracting(TableText.Row::line)
        .containsExactly(1, 3, 5);
  }
}
