package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.WeekRecovery;
import shelfful.drawing.PaperSize;
import shelfful.drawing.Printing;
import shelfful.measure.LengthUnit;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

/** An unsaved week when the program is killed. */
class KeptWeekTest {
  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();
  private final WeekViewModel model = new WeekViewModel(Words.english(), tasks, Optional.empty());
  private final WeekFileViewModel files =
      new WeekFileViewModel(
          Words.english(),
          tasks,
          model,
          () -> Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));

  @TempDir private Path folder;

  private WeekRecovery recovery() {
    return new WeekRecovery(new RecoveryFolder(folder.resolve("recovery")));
  }

  private KeptWeek kept() {
    return new KeptWeek(tasks, recovery(), model, files);
  }

  private List<Path> inFolder() throws IOException {
    Path recovery = folder.resolve("recovery");
    if (!Files.isDirectory(recovery)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(recovery)) {
      return all.filter(file -> file.toString().endsWith(".week.json")).toList();
    }
  }

  @Test
  void anUnsavedWeekIsKeptOnceTheTimeIsUpAndForgottenWhenItIsSavedOrDropped() throws IOException {
    KeptWeek kept = kept();
    model.begin(SmallWeek.planned());
    assertThat(inFolder()).isEmpty();
    tasks.passTime();
    assertThat(inFolder()).hasSize(1);
    files.saveNow(folder.resolve("a.week.json"));
    assertThat(inFolder()).isEmpty();
    model.freezeOrRelease();
    tasks.passTime();
    assertThat(inFolder()).hasSize(1);
    model.undo();
    assertThat(inFolder()).as("it is as it was saved").isEmpty();
    model.redo();
    tasks.passTime();
    kept.drop();
    assertThat(inFolder()).isEmpty();
  }

  @Test
  void aWeekThatAKilledProgramLeftComesBackUnsavedAndIsKeptMeanwhile() throws IOException {
    kept();
    model.begin(SmallWeek.planned());
    tasks.passTime();
    assertThat(recovery().left()).as("a running program's week is its own").isEmpty();
    // No process of this number ever began when the first of all did.
    Path own = inFolder().get(0);
    Files.move(own, own.resolveSibling("week-2147483646-1.week.json"));
    WeekRecovery.Left left = recovery().left().get(0);
    assertThat(left.week().plan().firings()).isEqualTo(SmallWeek.planned().plan().firings());

    WeekViewModel again = new WeekViewModel(Words.english(), tasks, Optional.empty());
    WeekFileViewModel itsFiles =
        new WeekFileViewModel(
            Words.english(),
            tasks,
            again,
            () -> Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));
    new KeptWeek(tasks, recovery(), again, itsFiles).recover(left);
    assertThat(again.plan().orElseThrow().firings())
        .isEqualTo(SmallWeek.planned().plan().firings());
    assertThat(itsFiles.unsaved().get()).isTrue();
    assertThat(recovery().left()).isEmpty();
    assertThat(inFolder()).as("kept as its own before what was left is deleted").hasSize(1);
  }

  @Test
  void aDamagedFileIsNotOfferedAndNotDeleted() throws IOException {
    Path damaged =
        Files.createDirectories(folder.resolve("recovery")).resolve("week-1-1.week.json");
    Files.writeString(damaged, "{");
    assertThat(recovery().left()).isEmpty();
    assertThat(damaged).exists();
  }
}
