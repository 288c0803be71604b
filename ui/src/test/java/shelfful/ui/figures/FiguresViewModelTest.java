package shelfful.ui.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.record.FiredPiece;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.Ring;
import shelfful.record.UnpackedFiring;
import shelfful.ui.words.Words;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.ware.Zone;

class FiguresViewModelTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

  private final SimpleObjectProperty<List<UnpackedFiring>> firings =
      new SimpleObjectProperty<>(
          List.of(firing("later", DAY.plusDays(3), 4), firing("first", DAY, 2)));
  private final FiguresViewModel model = new FiguresViewModel(Words.english(), firings);

  @TempDir private Path folder;

  /** 50 kWh; as many pieces as wanted of 5 possible; the first is a second that was "=1+1". */
  private static UnpackedFiring firing(String id, LocalDate day, int count) {
    List<FiredPiece> pieces =
        IntStream.rangeClosed(1, count)
            .mapToObj(
                i ->
                    new FiredPiece("P" + i, "mug", Optional.of("clear"), "L1", Zone.TOP, Ring.EDGE))
            .toList();
    FiringCourse course =
        new FiringCourse(
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(100_000L),
            Optional.of(150_000L));
    Firing run = new Firing("kiln", FiringKind.GLAZE, new Cone("6"), 0, Atmosphere.OXIDATION);
    FiringRecord record =
        new FiringRecord(id, day, run, "MARK22", 0, Optional.of(5), pieces, course);
    return new UnpackedFiring(
        record, List.of(new PieceResult("P1", Grade.SECOND, Optional.of("=1+1"))));
  }

  @Test
  void seriesFollowTheDays() {
    assertThat(model.pieces())
        .containsExactly(
            new FiguresViewModel.Point(DAY.toEpochDay(), 2),
            new FiguresViewModel.Point(DAY.plusDays(3).toEpochDay(), 4));
    assertThat(model.limits()).allMatch(point -> point.value() == 5);
    assertThat(model.fill().get(0).value()).isEqualTo(40);
  }

  /** 50 kWh at 0.30 and 5 besides make 20; two pieces cost 10 each, four cost 5 each. */
  @Test
  void aPieceCostsWhatWasReckonedByHand() {
    assertThat(model.costs()).isEmpty();
    model.price("0,30", "5");
    assertThat(model.costs()).extracting(FiguresViewModel.Point::value).containsExactly(10.0, 5.0);
    model.price("cheap", "5");
    assertThat(model.told().get()).contains("plain numbers");
    assertThat(model.costs()).extracting(FiguresViewModel.Point::value).containsExactly(10.0, 5.0);
  }

  @Test
  void noCellOfASavedTableCanRunAsAFormula() throws IOException {
    Path file = folder.resolve("causes.csv");
    model.save(Page.CAUSES, file);
    String text = Files.readString(file);
    assertThat(text).contains("1+1");
    assertThat(text.lines()).noneMatch(line -> line.matches("\"?=.*"));
    model.save(Page.PIECES, folder.resolve("firings.csv"));
    assertThat(Files.readAllLines(folder.resolve("firings.csv"))).hasSize(3);
  }
}
