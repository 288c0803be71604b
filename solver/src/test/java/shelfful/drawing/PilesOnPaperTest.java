package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.measure.LengthUnit;

/** A loader can tell from paper and phone which piece goes on or into which. */
class PilesOnPaperTest {
  private static final InspectedLoad PILES =
      ((Inspection.Passed) new Inspector().inspect(shelfful.fixture.Loads.piles())).load();

  private static final Printing PLAIN = Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES);

  private static List<LayerList.Row> rows() {
    return LoadLists.of(PILES, LengthUnit.MILLIMETRES).layers().get(0).rows();
  }

  private static LayerList.Row row(String pieceId) {
    return rows().stream().filter(row -> row.holds(pieceId)).findFirst().orElseThrow();
  }

  @Test
  void aPileIsOneRowThatSaysHowItIsSet() {
    assertThat(rows()).hasSize(5);
    assertThat(row("DW-003").form()).isEqualTo("Bowl: 3 high, nested");
    assertThat(row("DW-005").form()).isEqualTo("Bowl: 2 rim to rim");
    assertThat(row("DW-008").form()).isEqualTo("Bowl: 2 foot to foot, the lower on its rim");
    assertThat(row("DB-001").form()).isEqualTo("Bowl: Beaker inside");
    assertThat(row("DB-002").form()).isEqualTo("Beaker");
  }

  @Test
  void everyFurtherPieceSaysWhatItGoesOnOrIn() {
    assertThat(row("DW-001").upwards())
        .extracting(LayerList.Upper::told)
        .containsExactly("DW-002 Bowl nested in DW-001", "DW-003 Bowl nested in DW-002");
    assertThat(row("DW-006").upwards())
        .extracting(LayerList.Upper::told)
        .containsExactly("DB-001 Beaker inside DW-006");
    assertThat(row("DW-004").upwards().get(0).told())
        .isEqualTo("DW-005 Bowl upside down, rim to rim on DW-004");
  }

  @Test
  void theSheetMarksHowManyAndTheKeyHow() {
    List<String> words =
        LoadDrawing.of(PILES, PLAIN).sheets().stream()
            .flatMap(sheet -> sheet.marks().stream())
            .filter(Mark.Text.class::isInstance)
            .map(mark -> ((Mark.Text) mark).words())
            .toList();
    assertThat(words).contains("×3", "+1", "×2");
    assertThat(words).anyMatch(one -> one.contains("1 × Bowl: 3 high, nested"));
    assertThat(words).anyMatch(one -> one.startsWith("8 on F1 – "));
    assertThat(words).anyMatch(one -> one.endsWith("inside Bowl"));
    assertThat(words).contains("10 pieces, 5.4 kg");
  }

  @Test
  void thePhoneTicksAPileAtOnceAndSaysPieceByPieceWhatGoesWhere() {
    String page = PhonePage.html(PILES, PLAIN);
    assertThat(page).contains("Bowl: 3 high, nested");
    assertThat(page).contains("then ").contains("DW-003 Bowl nested in DW-002");
    assertThat(page.split("data-piece=\"yes\"", -1)).hasSize(5 + 2 + 1);
  }
}
