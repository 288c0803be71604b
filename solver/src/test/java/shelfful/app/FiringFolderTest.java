package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.fixture.Loads;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

class FiringFolderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final InspectedLoad LOAD =
      ((Inspection.Passed) new Inspector().inspect(Loads.roundFull())).load();

  @TempDir private Path folder;

  private static FiringRecord begun(FiringFolder kept) {
    Opened<UnpackedFiring> opened = kept.begin(LOAD, DAY, Optional.of(40));
    return ((Opened.Ready<UnpackedFiring>) opened).value().record();
  }

  @Test
  void aFolderThatIsNotThereHoldsNoFiringsAndIsMadeWithTheFirst() {
    FiringFolder kept = new FiringFolder(folder.resolve("not").resolve("there"));
    assertThat(kept.all()).isEqualTo(new KeepFirings.Kept(List.of(), List.of()));
    assertThat(kept.causes()).isEmpty();
    begun(kept);
    assertThat(kept.all().firings()).hasSize(1);
  }

  @Test
  void thePlanLiesBesideItsFiringSoThatItsShelvesCanBeDrawnLater() {
    FiringFolder kept = new FiringFolder(folder);
    FiringRecord record = begun(kept);
    InspectedLoad again = new FiringFolder(folder).planOf(record).orElseThrow();
    assertThat(again.load().layers()).isEqualTo(LOAD.load().layers());
  }

  @Test
  void aDamagedPlanIsNoPlan() throws IOException {
    FiringFolder kept = new FiringFolder(folder);
    FiringRecord record = begun(kept);
    Files.writeString(folder.resolve(record.id() + ".plan.json"), "{}");
    assertThat(kept.planOf(record)).isEmpty();
  }

  @Test
  void beginningThePlanOfADayAgainLosesNoResults() {
    FiringFolder kept = new FiringFolder(folder);
    FiringRecord record = begun(kept);
    PieceResult lost =
        new PieceResult(record.pieces().get(0).pieceId(), Grade.LOST, Optional.of("cracked"));
    assertThat(kept.add(record, List.of(lost))).isEmpty();
    begun(kept);
    assertThat(kept.all().firings().get(0).results()).containsExactly(lost);
  }

  @Test
  void aFiringThatWasRenamedIsWrittenWhereItIsAndNotBegunAgain() throws IOException {
    FiringFolder kept = new FiringFolder(folder);
    FiringRecord record = begun(kept);
    Path renamed = folder.resolve("june.firing.json");
    Files.move(folder.resolve(record.id() + ".firing.json"), renamed);
    assertThat(kept.all().firings()).hasSize(1);
    PieceResult lost =
        new PieceResult(record.pieces().get(0).pieceId(), Grade.LOST, Optional.empty());
    assertThat(kept.add(record, List.of(lost))).isEmpty();
    assertThat(kept.note(record.with(FiringCourse.UNKNOWN))).isEmpty();
    assertThat(begun(new FiringFolder(folder))).isEqualTo(record);
    KeepFirings.Kept all = new FiringFolder(folder).all();
    assertThat(all.notes()).isEmpty();
    assertThat(all.firings()).containsExactly(new UnpackedFiring(record, List.of(lost)));
  }

  @Test
  void aSecondFileOfTheSameFiringIsNotCountedAndIsTold() throws IOException {
    FiringFolder kept = new FiringFolder(folder);
    FiringRecord record = begun(kept);
    Files.copy(folder.resolve(record.id() + ".firing.json"), folder.resolve("copy of.firing.json"));
    assertThat(kept.all().firings()).hasSize(1);
    assertThat(kept.all().notes().get(0))
        .contains(record.id() + ".firing.json", "copy of.firing.json", "id", "Take one");
  }

  @Test
  void onlyHarmlessTextStandsInTheListOfCauses() {
    FiringFolder kept = new FiringFolder(folder);
    assertThat(
            kept.keepCauses(
                List.of("crawled", " ", "a".repeat(81), "\u202eturned", "bell\u0007", "dented")))
        .isEmpty();
    assertThat(kept.causes()).containsExactly("crawled", "dented");
  }

  @Test
  void aNoteThatIsNoneIsRefusedWithASentence() {
    FiringRecord record = begun(new FiringFolder(folder));
    Opened<List<PieceResult>> read =
        FiringFolder.fromNote("note", "<html>".getBytes(StandardCharsets.UTF_8), record);
    assertThat(read).isInstanceOf(Opened.Refused.class);
    assertThat(((Opened.Refused<List<PieceResult>>) read).sentences().get(0)).startsWith("note");
  }

  @Test
  void whereTheFolderCannotBeMadeASentenceSaysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    Opened<UnpackedFiring> opened =
        new FiringFolder(file.resolve("firings")).begin(LOAD, DAY, Optional.empty());
    assertThat(opened).isInstanceOf(Opened.Refused.class);
  }
}
