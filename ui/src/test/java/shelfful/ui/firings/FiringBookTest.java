package shelfful.ui.firings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.FiringFolder;
import shelfful.app.KeepFirings;
import shelfful.files.UnpackingNote;
import shelfful.record.Causes;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;
import shelfful.ui.DemoStudio;
import shelfful.ui.SmallPlan;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class FiringBookTest {
  private final Words words = Words.english();
  private FiringBook book;
  private UnpackingViewModel unpacking;

  @TempDir private Path folder;

  @BeforeEach
  void open() {
    book =
        new FiringBook(
            words,
            new SameThreadTaskRunner(),
            new FiringFolder(folder.resolve("firings")),
            () -> LocalDate.of(2026, 6, 1));
    unpacking = new UnpackingViewModel(words, new SameThreadTaskRunner(), book);
  }

  private UnpackedFiring begun() {
    book.begin(SmallPlan.load());
    return book.chosen().get().orElseThrow();
  }

  /** What another program would read from the folder now. */
  private UnpackedFiring onDisk() {
    KeepFirings.Kept kept = new FiringFolder(folder.resolve("firings")).all();
    assertThat(kept.notes()).isEmpty();
    assertThat(kept.firings()).hasSize(1);
    return kept.firings().get(0);
  }

  @Test
  void aPlanIsRecordedWithEveryPieceAndTheMostPossible() {
    FiringRecord record = begun().record();
    assertThat(record.pieces()).hasSize(SmallPlan.load().load().placed());
    assertThat(record.limit().orElseThrow()).isGreaterThanOrEqualTo(record.pieces().size());
    assertThat(onDisk().record()).isEqualTo(record);
    assertThat(book.plan().get().map(load -> load.load())).contains(SmallPlan.load().load());
  }

  @Test
  void everyMarkIsKeptAtOnceAndTheNextPieceIsChosen() {
    begun();
    List<UnpackedRow> rows = unpacking.rows().get();
    unpacking.choose(rows.get(0).pieceId());
    unpacking.mark(Grade.SECOND, "crawled");
    assertThat(unpacking.pieceId().get()).isEqualTo(rows.get(1).pieceId());
    unpacking.mark(Grade.GOOD, "left over in the field");
    PieceResult first =
        new PieceResult(rows.get(0).pieceId(), Grade.SECOND, Optional.of("crawled"));
    PieceResult second = new PieceResult(rows.get(1).pieceId(), Grade.GOOD, Optional.empty());
    assertThat(onDisk().results()).containsExactly(first, second);
    assertThat(unpacking.grades())
        .containsEntry(first.pieceId(), Grade.SECOND)
        .containsEntry(second.pieceId(), Grade.GOOD);
  }

  @Test
  void theLastMarkOfAPieceHolds() {
    begun();
    String piece = unpacking.rows().get().get(0).pieceId();
    unpacking.choose(piece);
    unpacking.mark(Grade.LOST, "cracked");
    unpacking.choose(piece);
    unpacking.mark(Grade.GOOD, "");
    assertThat(onDisk().result(piece).orElseThrow().grade()).isEqualTo(Grade.GOOD);
    assertThat(onDisk().results()).hasSize(1);
  }

  @Test
  void theRestOfALayerIsGoodAndNoOtherLayerIsTouched() {
    begun();
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.LOST, "");
    int on = unpacking.rows().get().size();
    unpacking.restIsGood();
    assertThat(onDisk().count(Grade.GOOD)).isEqualTo(on - 1);
    assertThat(onDisk().count(Grade.LOST)).isEqualTo(1);
  }

  @Test
  void aCauseTypedForTheFirstTimeIsOnTheListFromThenOn() {
    begun();
    assertThat(unpacking.causes().get()).isEqualTo(Causes.USUAL);
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.SECOND, "c".repeat(81));
    assertThat(book.told().get()).contains("80").contains("Nothing was marked");
    assertThat(book.chosen().get().orElseThrow().results()).isEmpty();
    unpacking.mark(Grade.SECOND, "dented by the cat");
    assertThat(new UnpackingViewModel(words, new SameThreadTaskRunner(), book).causes().get())
        .contains("dented by the cat");
    unpacking.forget("dented by the cat");
    assertThat(new UnpackingViewModel(words, new SameThreadTaskRunner(), book).causes().get())
        .doesNotContain("dented by the cat")
        .contains("crawled");
  }

  @Test
  void everyFolderKeepsItsOwnCauses() throws IOException {
    FiringFolder mine = new FiringFolder(folder.resolve("firings"));
    begun();
    mine.keepCauses(List.of("crawled", "mine"));
    FiringFolder other = new FiringFolder(folder.resolve("other"));
    Files.createDirectories(other.path());
    other.keepCauses(List.of("theirs"));
    book.use(other);
    assertThat(unpacking.causes().get()).containsExactly("theirs");
    begun();
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.SECOND, "dented by the cat");
    assertThat(other.causes()).containsExactly("theirs", "dented by the cat");
    assertThat(mine.causes()).containsExactly("crawled", "mine");
  }

  @Test
  void aListOfCausesThatCannotBeKeptIsTold() throws IOException {
    begun();
    Files.createDirectories(folder.resolve("firings").resolve("causes.txt"));
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.SECOND, "dented by the cat");
    assertThat(book.told().get()).contains("causes.txt");
  }

  @Test
  void aPhonesNoteIsTakenWholeOrNotAtAll() {
    FiringRecord record = begun().record();
    String piece = record.pieces().get(0).pieceId();
    List<PieceResult> results =
        List.of(new PieceResult(piece, Grade.LOST, Optional.of("stuck to the shelf")));
    String note = UnpackingNote.write(record, results);
    book.takeNote("note", note.replace("stuck", "struck").getBytes(StandardCharsets.UTF_8));
    assertThat(book.told().get()).contains("check sum");
    assertThat(onDisk().results()).isEmpty();
    book.takeNote("note", note.getBytes(StandardCharsets.UTF_8));
    assertThat(onDisk().results()).isEqualTo(results);
  }

  @Test
  void nothingCanBeMarkedInAMadeUpYearAndNothingOfItIsKept() {
    book.showMadeUp(DemoStudio.studio());
    assertThat(book.firings().get()).hasSizeGreaterThan(50);
    assertThat(book.madeUp().get()).isTrue();
    UnpackedFiring before = book.chosen().get().orElseThrow();
    unpacking.choose(unpacking.rows().get().get(0).pieceId());
    unpacking.mark(Grade.LOST, "cracked");
    assertThat(book.chosen().get()).contains(before);
    assertThat(book.told().get()).contains("made up");
    assertThat(Files.exists(folder.resolve("firings"))).isFalse();
  }

  @Test
  void aDamagedFileIsToldAndTheOthersAreRead() throws IOException {
    begun();
    Files.writeString(folder.resolve("firings").resolve("2026-06-02-X.firing.json"), "{");
    book.read();
    assertThat(book.firings().get()).hasSize(1);
    assertThat(book.told().get()).contains("2026-06-02-X.firing.json");
  }
}
