package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.files.WorkWriter;
import shelfful.fixture.Loads;
import shelfful.measure.Angle;
import shelfful.measure.Point;

class WorkFileTest {
  @TempDir private Path folder;

  private final WorkPlan plan = WorkPlan.of(Loads.roundFull());
  private final WorkPlan moved = new Edit.MovePiece("BK-001", Point.ORIGIN, Angle.ZERO).on(plan);

  private Path file() {
    return folder.resolve("tuesday.work.json");
  }

  private WorkFile saved() {
    return ((WorkFile.Saved.Done) WorkFile.at(file()).save(plan)).file();
  }

  @Test
  void savesAgainAndAgainAndKeepsTheVersionBefore() throws IOException {
    WorkFile first = saved();
    assertThat(first.save(moved)).isInstanceOf(WorkFile.Saved.Done.class);
    assertThat(Files.readAllBytes(file())).isEqualTo(WorkWriter.bytes(moved));
    assertThat(Files.readAllBytes(folder.resolve("tuesday.work.json.bak")))
        .isEqualTo(WorkWriter.bytes(plan));
  }

  @Test
  void neverWritesOverAFileThatWasChangedElsewhere() throws IOException {
    saved();
    Opened.Ready<WorkFile.OpenWork> open = (Opened.Ready<WorkFile.OpenWork>) WorkFile.open(file());
    byte[] elsewhere = WorkWriter.bytes(moved);
    Files.write(file(), elsewhere);
    assertThat(open.value().file().orElseThrow().save(plan))
        .isInstanceOf(WorkFile.Saved.ChangedElsewhere.class);
    assertThat(Files.readAllBytes(file())).isEqualTo(elsewhere);
    WorkFile other = open.value().file().orElseThrow().another();
    assertThat(other.path().getFileName()).hasToString("tuesday-2.work.json");
    assertThat(other.save(plan)).isInstanceOf(WorkFile.Saved.Done.class);
    assertThat(Files.readAllBytes(file())).isEqualTo(elsewhere);
    assertThat(open.value().file().orElseThrow().another().path().getFileName())
        .hasToString("tuesday-3.work.json");
    assertThat(open.value().file().orElseThrow().saveAllTheSame(plan))
        .isInstanceOf(WorkFile.Saved.Done.class);
    assertThat(Files.readAllBytes(folder.resolve("tuesday.work.json.bak"))).isEqualTo(elsewhere);
  }

  @Test
  void aFileThatIsGoneIsAChangeToo() throws IOException {
    WorkFile first = saved();
    Files.delete(file());
    assertThat(first.save(moved)).isInstanceOf(WorkFile.Saved.ChangedElsewhere.class);
    assertThat(file()).doesNotExist();
  }

  @Test
  void saysWhyItCouldNotSave() {
    WorkFile nowhere = WorkFile.at(folder.resolve("gone").resolve("a.work.json"));
    assertThat(((WorkFile.Saved.Failed) nowhere.save(plan)).sentence()).contains("a.work.json");
  }
}
