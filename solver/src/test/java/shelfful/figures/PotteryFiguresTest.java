package shelfful.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shelfful.files.FigureTable;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.record.FiredPiece;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.Ring;
import shelfful.record.UnpackedFiring;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.ware.Zone;

class PotteryFiguresTest {
  private static UnpackedFiring firing(String id, int day, PieceResult... results) {
    List<FiredPiece> pieces =
        java.util.stream.Stream.of("A", "B", "C", "D")
            .map(p -> new FiredPiece(p, "mug", Optional.empty(), "L1", Zone.TOP, Ring.EDGE))
            .toList();
    FiringCourse course =
        new FiringCourse(
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(1_000_000L),
            Optional.of(1_060_000L));
    Firing planned = new Firing("kiln", FiringKind.GLAZE, new Cone("6"), 0, Atmosphere.OXIDATION);
    return new UnpackedFiring(
        new FiringRecord(
            id, LocalDate.of(2026, 6, day), planned, "7K3-QM2", 3, Optional.of(5), pieces, course),
        List.of(results));
  }

  private static PieceResult lost(String piece, String cause) {
    return new PieceResult(piece, Grade.LOST, Optional.of(cause));
  }

  /** 60 kWh at 0.30 and 2 besides are 20; of four pieces each cost 5; 4 of 5 is a fill of 0.8. */
  @Test
  void reckonsFillAndCost() {
    PotteryFigures figures =
        PotteryFigures.of(
            List.of(
                firing("late", 9, lost("A", "cracked")),
                firing("early", 2, new PieceResult("B", Grade.GOOD, Optional.empty()))),
            new FiringPrices(OptionalDouble.of(0.3), OptionalDouble.of(2)));
    FiringFigures first = figures.firings().get(0);
    assertThat(first.firingId()).isEqualTo("early");
    assertThat(first.fill()).hasValue(0.8);
    assertThat(first.cost()).hasValue(20);
    assertThat(first.costPerPiece()).hasValue(5);
    assertThat(first.good()).isOne();
    assertThat(figures.firingRows().get(1))
        .contains("late", "1", "0.800", "60.0", "20.00", "5.000");
  }

  @Test
  void saysNothingOfACostThatIsNotKnown() {
    FiringFigures figures = FiringFigures.of(firing("f", 1), FiringPrices.UNKNOWN);
    assertThat(figures.cost()).isEmpty();
    assertThat(figures.costPerPiece()).isEmpty();
  }

  @Test
  void countsTheLastResultOfAPieceByItsCause() {
    List<CauseCount> causes =
        CauseCount.of(
            List.of(
                firing(
                    "f",
                    1,
                    lost("A", "cracked"),
                    new PieceResult("A", Grade.SECOND, Optional.of("crawled")),
                    lost("B", "crawled"),
                    new PieceResult("C", Grade.LOST, Optional.empty()))));
    assertThat(causes)
        .containsExactly(new CauseCount("crawled", 1, 1), new CauseCount("not said", 0, 1));
  }

  /** CWE-1236: a cause that looks like a formula must not run in a spreadsheet. */
  @Test
  void noCauseRunsAsAFormula() {
    PotteryFigures figures =
        PotteryFigures.of(
            List.of(firing("f", 1, lost("A", "=cmd|'/c calc'!A1"))), FiringPrices.UNKNOWN);
    String table =
        new String(
            FigureTable.bytes(PotteryFigures.causeHeadings(), figures.causeRows()),
            java.nio.charset.StandardCharsets.UTF_8);
    assertThat(table).isEqualTo("cause,seconds,lost\n'=cmd|'/c calc'!A1,0,1\n");
  }
}
