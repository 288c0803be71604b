package shelfful.ui.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.app.BatchLines;
import shelfful.files.BatchListReader;
import shelfful.kiln.Chamber;
import shelfful.kiln.Kiln;
import shelfful.measure.Length;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

class PasteViewModelTest {
  private final Steps steps = new Steps();
  private final BatchListViewModel list =
      new BatchListViewModel(Words.english(), DemoStudio.studio(), steps);

  @TempDir private Path folder;

  private PasteViewModel paste(String text) {
    return new PasteViewModel(list, ColumnMemory.ofThisRun(), text);
  }

  @Test
  void twoHundredRowsFromASpreadsheetComeInAsOneStepAndGoAsOneStep() {
    String rows =
        IntStream.rangeClosed(1, 200)
            .mapToObj(i -> "3\tmug\tclear-gloss\tP" + i)
            .collect(Collectors.joining("\r\n"));
    PasteViewModel paste = paste("Quantity\tForm\tGlaze\tBatch\r\n" + rows);
    assertThat(paste.table().get().headed()).isTrue();
    assertThat(paste.good()).isEqualTo(200);
    assertThat(list.lines()).as("nothing before it is confirmed").isEmpty();
    paste.confirm();
    assertThat(list.batches()).hasSize(200).allMatch(batch -> batch.quantity() == 3);
    assertThat(steps.done()).hasSize(1);
    list.undo();
    assertThat(list.lines()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void readsTheSameAsAFileWithTheSameTextHoweverItIsParted(String sign) {
    String text =
        String.join(
                "\n",
                List.of(
                    "glaze,quantity,form,due", "clear-gloss,4,mug,2026-06-05", "river-blue,2,mug,"))
            .replace(",", sign);
    PasteViewModel paste = paste(text);
    paste.confirm();
    var file =
        BatchListReader.read("a.csv", text.getBytes(StandardCharsets.UTF_8), list.studio())
            .found()
            .orElseThrow();
    assertThat(list.batches()).usingRecursiveComparison().ignoringFields("id").isEqualTo(file);
  }

  @Test
  void withoutAHeaderTheColumnsAreGuessedFromWhatTheyHoldAndCanBeChosenAnew() {
    PasteViewModel paste = paste("Mug;5;clear gloss;7\nmug;6;River blue;8\nMUG;7;;9");
    assertThat(paste.table().get().headed()).isFalse();
    assertThat(paste.table().get().mapping()).startsWith("form", "quantity");
    paste.map(1, "priority");
    paste.map(3, "quantity");
    assertThat(paste.lines().get(0).batch().map(batch -> batch.quantity())).contains(7);
    assertThat(paste.lines().get(0).batch().map(batch -> batch.priority())).contains(5);
    paste.map(3, "");
    assertThat(paste.good()).isZero();
    assertThat(paste.problems()).first().asString().contains("Row 1, column Quantity");
  }

  @Test
  void oneColumnCannotBeTwoThingsAndTwoColumnsNotOne() {
    PasteViewModel paste = paste("form\tquantity\tother\nmug\t5\t6");
    assertThat(paste.table().get().mapping()).containsExactly("form", "quantity", "");
    paste.map(2, "quantity");
    assertThat(paste.table().get().mapping()).containsExactly("form", "", "quantity");
    assertThat(paste.lines().get(0).batch().map(batch -> batch.quantity())).contains(6);
  }

  @Test
  void headingsInTheLanguageOfTheScreenAreUnderstoodAndSoAreThoseOfFiles() {
    BatchListViewModel german =
        new BatchListViewModel(Words.in(Language.GERMAN), list.studio(), steps);
    PasteViewModel paste =
        new PasteViewModel(
            german, ColumnMemory.ofThisRun(), "Menge\tForm\tglaze\n4\tmug\tclear-gloss");
    assertThat(paste.table().get().mapping()).containsExactly("quantity", "form", "glaze");
    assertThat(paste.good()).isEqualTo(1);
  }

  @Test
  void aDecimalCommaInACountIsToldAndNeverBecomesAnotherNumber() {
    PasteViewModel paste = paste("form\tquantity\nmug\t12,5\nmug\t12,0\nmug\t1,234");
    assertThat(paste.table().get().decimalSign()).contains(',');
    assertThat(paste.decimalSign()).isEqualTo("comma");
    assertThat(paste.lines().get(0).batch()).isEmpty();
    assertThat(paste.lines().get(1).batch().map(batch -> batch.quantity())).contains(12);
    assertThat(paste.lines().get(2).batch()).isEmpty();
    assertThat(paste.problems()).first().asString().contains("12,5").contains("Write digits");
  }

  @Test
  void rowsThatAreRightComeInAndThoseThatAreWrongCanBeKeptAsAFile() {
    PasteViewModel paste = paste("form\tquantity\tset\nmug\t5\t\nmugg\t6\t=1+1\nmug\t7\t");
    assertThat(paste.good()).isEqualTo(2);
    assertThat(paste.wrong()).isEqualTo(1);
    String file = new String(paste.wrongRows(), StandardCharsets.UTF_8);
    assertThat(file.lines()).hasSize(2);
    assertThat(file).contains("mugg").contains("'=1+1");
    paste.confirm();
    assertThat(list.batches()).extracting(batch -> batch.quantity()).containsExactly(5, 7);
  }

  @Test
  void anotherSignBetweenCellsCanBeChosen() {
    PasteViewModel paste = paste("form,quantity\nmug,5");
    paste.split(';');
    assertThat(paste.good()).isZero();
    paste.split(',');
    assertThat(paste.good()).isEqualTo(1);
  }

  @Test
  void whatColumnsWereTakenForIsRememberedForTheSameHeadings() {
    ColumnMemory memory = ColumnMemory.in(folder);
    String text = "what\tquantity\thow many\nmug\t1\t6";
    PasteViewModel first = new PasteViewModel(list, memory, text);
    assertThat(first.table().get().headed()).as("one known heading of three").isFalse();
    first.head(true);
    first.map(0, "form");
    first.map(2, "quantity");
    first.confirm();
    assertThat(list.batches()).extracting(batch -> batch.quantity()).containsExactly(6);
    ColumnMemory later = ColumnMemory.in(folder);
    PasteViewModel second = new PasteViewModel(list, later, text);
    assertThat(second.table().get().mapping()).containsExactly("form", "", "quantity");
    assertThat(second.table().get().headed()).isTrue();
  }

  @Test
  void aTextThatIsNoTableIsRefusedWithTheReason() {
    PasteViewModel paste = paste("form,quantity\n\"mug,5\n");
    assertThat(paste.good()).isZero();
    assertThat(paste.problems()).first().asString().contains("quotation mark");
  }

  @Test
  void idsThatAreTakenAreGivenAnew() {
    paste("batch\tform\tquantity\nA\tmug\t5").confirm();
    paste("batch\tform\tquantity\nA\tmug\t6").confirm();
    assertThat(list.lines()).extracting(line -> line.cells().get(0)).doesNotHaveDuplicates();
    assertThat(list.lines()).allMatch(line -> line.batch().isPresent());
    assertThat(BatchLines.headings()).hasSize(list.lines().get(0).cells().size());
  }

  /** A chamber of 150 mm has room for an egg cup and none for a vase of 300 mm. */
  @Test
  void wareThatGoesIntoNoKilnIsToldBeforeItIsTaken() {
    Studio demo = DemoStudio.studio();
    Kiln kiln = demo.kilns().get(0);
    Length low = Length.ofMillimetres(150);
    Kiln lower =
        new Kiln(
            kiln.id(),
            kiln.name(),
            kiln.loading(),
            new Chamber(kiln.chamber().floorPlan(), low),
            kiln.hottest(),
            List.of(),
            kiln.columnPlans());
    Studio studio =
        new Studio(
            demo.name(),
            demo.unit(),
            demo.forms(),
            demo.glazes(),
            List.of(lower),
            demo.shelves(),
            demo.posts(),
            demo.rules());
    BatchListViewModel small = new BatchListViewModel(Words.english(), studio, steps);
    String rows = "quantity,form,glaze\n2,tall-vase,tin-white\n2,egg-cup,clear-gloss\n";
    PasteViewModel paste = new PasteViewModel(small, ColumnMemory.ofThisRun(), rows);
    assertThat(paste.good()).isEqualTo(2);
    assertThat(paste.problems()).hasSize(1);
    assertThat(paste.problems().get(0)).contains("1").contains("is 301.3 mm tall");
    paste.confirm();
    assertThat(small.faults(10)).isEqualTo(paste.problems());
  }
}
