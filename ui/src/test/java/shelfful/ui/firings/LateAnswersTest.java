package shelfful.ui.firings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.FiringFolder;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.ui.DemoStudio;
import shelfful.ui.SmallPlan;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.words.Words;

/** What is read in the background comes when something else may be looked at already. */
class LateAnswersTest {
  private final QueuedTaskRunner tasks = new QueuedTaskRunner();
  private FiringBook book;
  private UnpackingViewModel unpacking;

  @TempDir private Path folder;

  @BeforeEach
  void open() {
    book =
        new FiringBook(
            Words.english(),
            tasks,
            new FiringFolder(folder.resolve("firings")),
            () -> LocalDate.of(2026, 6, 1));
    unpacking = new UnpackingViewModel(Words.english(), tasks, book);
  }

  /** Everything that waits, and whatever that leads to. */
  private void finish() {
    while (tasks.waiting() > 0) {
      tasks.doWork();
      tasks.doSteps();
    }
  }

  private void begun() {
    book.begin(SmallPlan.load());
    finish();
  }

  @Test
  void aMadeUpYearThatComesLateIsNotShownAmongTheOwnFirings() {
    begun();
    book.showMadeUp(DemoStudio.studio());
    book.read();
    tasks.doLatestWork();
    tasks.doSteps();
    finish();
    assertThat(book.madeUp().get()).isFalse();
    assertThat(book.firings().get()).hasSize(1);
    assertThat(book.told().get()).doesNotContain("made-up");
  }

  @Test
  void aRecordThatIsBegunWhileAnotherFolderIsOpenedIsToldAndNotShownThere() {
    book.begin(SmallPlan.load());
    book.use(new FiringFolder(folder.resolve("other")));
    tasks.doLatestWork();
    tasks.doSteps();
    finish();
    assertThat(book.firings().get()).isEmpty();
    assertThat(book.told().get()).contains(folder.resolve("firings").toString());
  }

  @Test
  void theRecordAndItsFolderAreReadInTheBackground() throws IOException {
    book.begin(SmallPlan.load());
    tasks.doWork();
    try (Stream<Path> files = Files.list(folder.resolve("firings"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    tasks.doSteps();
    assertThat(book.firings().get()).hasSize(1);
  }

  @Test
  void nothingOfOneFolderIsNotedInAnother() {
    begun();
    String piece = book.chosen().get().orElseThrow().record().pieces().get(0).pieceId();
    book.use(new FiringFolder(folder.resolve("other")));
    boolean kept = book.add(List.of(new PieceResult(piece, Grade.LOST, Optional.empty())));
    assertThat(kept).isFalse();
    assertThat(folder.resolve("other")).doesNotExist();
    finish();
    assertThat(book.firings().get()).isEmpty();
  }

  @Test
  void aFiringOfTheSameNameInAnotherFolderHasItsOwnPlan() throws IOException {
    begun();
    assertThat(book.plan().get()).isPresent();
    String record = book.chosen().get().orElseThrow().record().id() + ".firing.json";
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.copy(folder.resolve("firings").resolve(record), other.resolve(record));
    book.use(new FiringFolder(other));
    finish();
    assertThat(book.chosen().get()).isPresent();
    assertThat(book.plan().get()).isEmpty();
  }

  @Test
  void whatIsMarkedWhileTheFolderIsReadStaysOnTheScreen() {
    begun();
    book.read();
    tasks.doWork();
    String piece = unpacking.rows().get().get(0).pieceId();
    unpacking.choose(piece);
    unpacking.mark(Grade.LOST, "");
    tasks.doSteps();
    assertThat(book.chosen().get().orElseThrow().result(piece)).isPresent();
    finish();
    assertThat(book.chosen().get().orElseThrow().result(piece)).isPresent();
    assertThat(book.told().get()).contains("1 firing in");
  }

  @Test
  void theShelvesAreDrawnInTheBackgroundAndOnceForAllMarks() {
    book.begin(SmallPlan.load());
    tasks.doWork();
    tasks.doSteps();
    tasks.doWork();
    tasks.doSteps();
    assertThat(book.plan().get()).isPresent();
    assertThat(unpacking.picture()).isEmpty();
    finish();
    String layer = unpacking.layerId().get();
    Object before = unpacking.picture().orElseThrow().sheet(layer);
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.LOST, "");
    assertThat(unpacking.picture().orElseThrow().sheet(layer)).isSameAs(before);
  }
}
