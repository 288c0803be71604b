package shelfful.ui.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.BatchLines;
import shelfful.files.BatchListReader;
import shelfful.ui.DemoStudio;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

class BatchListViewModelTest {
  private static final Path LIST = Path.of("..", "demo-data", "list-60.csv");

  private final Steps steps = new Steps();
  private final BatchListViewModel model =
      new BatchListViewModel(Words.english(), DemoStudio.studio(), steps);

  @TempDir private Path folder;

  private List<List<String>> rows() {
    return model.lines().stream().map(BatchLines.Line::cells).toList();
  }

  @Test
  void aListOpenedAndSavedHoldsTheSameBatches() throws IOException {
    model.open(LIST);
    assertThat(model.lines()).allMatch(line -> line.batch().isPresent());
    Path file = folder.resolve("copy.csv");
    model.save(file);
    assertThat(BatchListReader.read(file, model.studio()).found())
        .isEqualTo(BatchListReader.read(LIST, model.studio()).found());
    assertThat(model.unsaved().get()).isFalse();
    assertThat(model.counts().get()).isEqualTo(model.lines().size() + " batches, 60 pieces");
  }

  @Test
  void aWrongCellIsToldWithRowColumnValueAndAdviceAndIsNoBatchUntilItIsMended() {
    model.open(LIST);
    model.edit(2, "quantity", "12,5,0");
    assertThat(model.lines().get(2).batch()).isEmpty();
    assertThat(model.faults(100))
        .containsExactly(
            "Row 3, column Quantity: \"12,5,0\" is not a whole number."
                + " Write digits only, such as 12.");
    assertThat(model.counts().get()).endsWith("1 batch has something to mend and is not counted");
    model.edit(2, "quantity", "12");
    assertThat(model.lines().get(2).batch().orElseThrow().quantity()).isEqualTo(12);
    assertThat(model.faults(100)).isEmpty();
  }

  @Test
  void aMistypedFormIsAnsweredWithTheOneThatWasMeant() {
    model.open(LIST);
    model.edit(0, "form", "mugg");
    assertThat(model.faults(1)).first().asString().contains("mugg").contains("\"mug\"");
    assertThat(model.lines().get(0).fault("form")).isPresent();
    assertThat(model.lines().get(0).fault("glaze")).isEmpty();
  }

  @Test
  void aListWithSomethingToMendIsNotSavedBecauseItWouldLoseTheRow() {
    model.open(LIST);
    model.edit(0, "form", "");
    Path file = folder.resolve("list.csv");
    model.save(file);
    assertThat(file).doesNotExist();
    assertThat(model.message().get()).contains("Mend");
  }

  @Test
  void rowsAreAddedCopiedAndDeletedAndTakenBackStepByStep() {
    model.open(LIST);
    List<List<String>> before = rows();
    int fresh = model.add();
    assertThat(fresh).isEqualTo(before.size());
    assertThat(model.faults(9)).hasSize(2).allMatch(told -> told.contains("The cell is empty."));
    model.duplicate(List.of(0, 1));
    assertThat(rows().get(2).subList(1, 12)).isEqualTo(before.get(0).subList(1, 12));
    assertThat(rows().stream().map(row -> row.get(0))).doesNotHaveDuplicates();
    model.delete(List.of(0, 0, 4, 999, -1));
    assertThat(rows()).hasSize(before.size() + 1);
    assertThat(steps.done()).hasSize(3).extracting(Steps.Step::name).doesNotHaveDuplicates();
    List<List<String>> last = rows();
    model.undo();
    model.undo();
    model.undo();
    assertThat(rows()).isEqualTo(before);
    model.undo();
    assertThat(rows()).isEqualTo(before);
    model.redo();
    model.redo();
    model.redo();
    assertThat(rows()).isEqualTo(last);
  }

  @Test
  void twoBatchesOfOneIdAreToldAtTheSecond() {
    model.open(LIST);
    model.edit(1, "batch", rows().get(0).get(0));
    assertThat(model.lines().get(0).batch()).isPresent();
    assertThat(model.lines().get(1).fault("batch"))
        .hasValueSatisfying(fault -> assertThat(fault.wrong()).contains("line 1"));
  }

  @Test
  void aHundredFaultsAreToldAndTheRestCounted() {
    List<String> empty = Collections.nCopies(BatchLines.headings().size(), "");
    model.paste(Collections.nCopies(80, empty));
    assertThat(model.faults(100)).hasSize(101).last().isEqualTo("and 60 more.");
  }

  @Test
  void anotherStudioIsToldWhereItLacksAFormAndNothingIsChanged() {
    model.open(LIST);
    List<List<String>> before = rows();
    var studio = DemoStudio.studio();
    var other =
        new shelfful.studio.Studio(
            studio.name(),
            studio.unit(),
            studio.forms().stream().filter(form -> !form.id().equals("mug")).toList(),
            studio.glazes(),
            studio.kilns(),
            studio.shelves(),
            studio.posts(),
            studio.rules());
    model.use(other);
    assertThat(model.faults(100)).isNotEmpty().allMatch(told -> told.contains("mug"));
    assertThat(rows()).isEqualTo(before);
    assertThat(steps.done()).isEmpty();
  }

  @Test
  void aTableWithWrongRowsComesInWholeSoThatSavingItLosesNothing() throws IOException {
    Path file =
        Files.writeString(folder.resolve("a.csv"), "form;quantity;shelf\nmug;3;x\nmugg;4;y\n");
    assertThat(model.open(file)).isEmpty();
    assertThat(rows()).hasSize(2);
    assertThat(model.batches()).hasSize(1);
    assertThat(model.message().get()).contains("shelf");
    model.edit(1, "form", "mug");
    model.save(file);
    assertThat(BatchListReader.read(file, model.studio()).found().orElseThrow()).hasSize(2);
  }

  @Test
  void aTableWithoutAHeaderIsHandedBackToBeLookedAtFirst() throws IOException {
    Path file = Files.writeString(folder.resolve("a.csv"), "mug;3\nmug;4\n");
    assertThat(model.open(file)).contains("mug;3\nmug;4\n");
    assertThat(model.lines()).isEmpty();
  }

  @Test
  void aListThatCannotBeReadLeavesTheOneThatIsThere() throws IOException {
    model.open(LIST);
    List<List<String>> before = rows();
    Path torn = Files.write(folder.resolve("torn.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 65});
    model.open(torn);
    assertThat(model.message().get()).contains("torn.csv");
    assertThat(rows()).isEqualTo(before);
  }
}
