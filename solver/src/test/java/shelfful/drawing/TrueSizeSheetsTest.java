package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shelfful.load.Placement;
import shelfful.measure.LengthUnit;

class TrueSizeSheetsTest {
  private static final double TRUE_TO = 0.1;

  private static LoadDrawing drawing(PaperSize paper, String... layers) {
    Printing printing = Printing.plain(paper, LengthUnit.MILLIMETRES);
    return TrueSizeSheets.of(Loads.drum(), printing, Set.of(layers));
  }

  private static List<String> words(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).words())
        .toList();
  }

  @Test
  void coversAShelfOf533MillimetresWithThreeTimesThreePages() {
    // A4 less margins is 182 × 244 mm under the head, 8 mm of it the strip: 533 takes 4 by 3.
    LoadDrawing drawing = drawing(PaperSize.A4, "L1");
    assertThat(drawing.sheets().stream().map(sheet -> words(sheet).get(0)))
        .contains("L1, true size: A2", "L1, true size: D2", "L1, true size: B3");
    assertThat(drawing.sheets()).hasSizeBetween(8, 12);
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void everyPieceIsNumberedOnSomePage(PaperSize paper) {
    List<String> words =
        drawing(paper, "L1").sheets().stream().flatMap(sheet -> words(sheet).stream()).toList();
    Setting setting = new Setting(Loads.drum());
    GlazePalette palette = new GlazePalette(setting);
    for (SetPiece piece : setting.on(setting.layers().get(0))) {
      assertThat(words).contains(piece.number() + " " + palette.of(piece).letter());
    }
  }

  /** Puts the pages together by their own parts and measures between pots on different pages. */
  @Test
  void placesReadBackFromThePdfAreTheKilnsOwn() throws IOException {
    LoadDrawing drawing = drawing(PaperSize.A4, "L1");
    List<Spot> axes = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(PdfSurface.bytes(drawing))) {
      for (int page = 0; page < drawing.sheets().size(); page++) {
        Spot origin = drawing.sheets().get(page).plan().orElseThrow().origin();
        for (Box line : PaperReader.read(document.getPage(page)).straight()) {
          // Level strokes of 4 mm are the arms of the crosses on the axes.
          if (line.height() < 0.01 && Math.abs(line.width() - 4) < 0.01) {
            Spot middle = line.centre();
            axes.add(new Spot(middle.x() - origin.x(), origin.y() - middle.y()));
          }
        }
      }
    }
    List<Placement> placements =
        Loads.drum().load().layer("L1").orElseThrow().placements().stream()
            .collect(Collectors.toList());
    for (Placement placement : placements) {
      assertThat(axes)
          .as(placement.pieceId())
          .anySatisfy(
              axis -> {
                assertThat(axis.x()).isCloseTo(placement.at().x().millimetres(), within(TRUE_TO));
                assertThat(axis.y()).isCloseTo(placement.at().y().millimetres(), within(TRUE_TO));
              });
    }
  }

  @Test
  void everyPageHasItsRulerOfFiftyMillimetres() throws IOException {
    LoadDrawing drawing = drawing(PaperSize.LETTER);
    try (PDDocument document = Loader.loadPDF(PdfSurface.bytes(drawing))) {
      assertThat(document.getNumberOfPages()).isEqualTo(drawing.sheets().size());
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        assertThat(PaperReader.read(document.getPage(page)).straight())
            .anySatisfy(
                box -> {
                  assertThat(box.width()).isCloseTo(50, within(TRUE_TO));
                  assertThat(box.height()).isLessThan(0.01);
                  assertThat(box.left()).isCloseTo(PaperSize.MARGIN, within(0.01));
                });
      }
    }
  }

  @Test
  void theTwoHalvesOfAJointMarkMeet() {
    Tiling tiling =
        Tiling.over(new Reach(-266, 266), new Reach(-266, 266), new Box(14, 33, 196, 277));
    Box own = tiling.own();
    PlanView left = tiling.view(0, 1);
    PlanView right = tiling.view(1, 1);
    // The same place of the chamber lies on the joint of one page and the cut edge of the next.
    double x = own.right() - left.origin().x();
    assertThat(x).isCloseTo(own.left() - right.origin().x(), within(1e-9));
    PlanView below = tiling.view(0, 2);
    double y = left.origin().y() - own.bottom();
    assertThat(y).isCloseTo(below.origin().y() - own.top(), within(1e-9));
  }

  @Test
  void keepsWordsApartAndInsideTheMargins() {
    for (Sheet sheet : drawing(PaperSize.A4).sheets()) {
      List<Mark.Text> texts =
          sheet.marks().stream()
              .filter(Mark.Text.class::isInstance)
              .map(Mark.Text.class::cast)
              .toList();
      Box printed = new Box(12, 12, sheet.width() - 12, sheet.height() - 12);
      assertThat(sheet.marks()).allMatch(mark -> printed.holds(Extent.of(mark)));
      for (int i = 0; i < texts.size(); i++) {
        for (Mark.Text later : texts.subList(i + 1, texts.size())) {
          assertThat(texts.get(i).box().overlaps(later.box()))
              .as("%s and %s", texts.get(i), later)
              .isFalse();
        }
      }
    }
  }

  @Test
  void refusesALayerThatThereIsNot() {
    assertThatThrownBy(() -> drawing(PaperSize.A4, "L9"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("L9");
  }
}
