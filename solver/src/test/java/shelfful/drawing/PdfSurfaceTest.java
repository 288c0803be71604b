package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.LengthUnit;

class PdfSurfaceTest {
  /** Half a printer dot at 127 dots per inch, and the least the sheets promise. */
  private static final double TRUE_TO = 0.1;

  private static LoadDrawing drawing(InspectedLoad load) {
    return LoadDrawing.of(load, PaperSize.A4, LengthUnit.MILLIMETRES);
  }

  private static PDDocument read(LoadDrawing drawing) throws IOException {
    return Loader.loadPDF(PdfSurface.bytes(drawing));
  }

  @Test
  void hasAPageOfTrueSizeForEachSheet() throws IOException {
    LoadDrawing drawing = LoadDrawing.of(Loads.drum(), PaperSize.LETTER, LengthUnit.INCHES);
    try (PDDocument document = read(drawing)) {
      assertThat(document.getNumberOfPages()).isEqualTo(drawing.sheets().size());
      for (PDPage page : document.getPages()) {
        assertThat(page.getMediaBox().getWidth()).isCloseTo(8.5f * 72, within(0.01f));
        assertThat(page.getMediaBox().getHeight()).isCloseTo(11f * 72, within(0.01f));
      }
    }
  }

  @Test
  void scaleBarIsFiftyMillimetresOnPaper() throws IOException {
    LoadDrawing drawing = drawing(Loads.drum());
    try (PDDocument document = read(drawing)) {
      for (int i : planPages(drawing)) {
        assertThat(bars(document.getPage(i), 50)).as("page " + (i + 1)).hasSize(1);
      }
    }
  }

  @Test
  void scaleBarIsTwoInchesOnPaperForPeopleWhoReadInches() throws IOException {
    LoadDrawing drawing = LoadDrawing.of(Loads.cabinet(), PaperSize.LETTER, LengthUnit.INCHES);
    try (PDDocument document = read(drawing)) {
      for (int i : planPages(drawing)) {
        assertThat(bars(document.getPage(i), 50.8)).as("page " + (i + 1)).hasSize(1);
      }
    }
  }

  /** Level lines of a length at the left margin: the scale bar and nothing else. */
  private static List<Box> bars(PDPage page, double length) throws IOException {
    return PaperReader.read(page).straight().stream()
        .filter(box -> box.height() < 0.01 && Math.abs(box.left() - PaperSize.MARGIN) < 0.01)
        .filter(box -> Math.abs(box.width() - length) <= TRUE_TO)
        .toList();
  }

  private static List<Integer> planPages(LoadDrawing drawing) {
    return java.util.stream.IntStream.range(0, drawing.sheets().size())
        .filter(i -> drawing.sheets().get(i).plan().isPresent())
        .boxed()
        .toList();
  }

  @Test
  void piecesStandWhereThePlanSaysAtTheScaleThatIsPrinted() throws IOException {
    InspectedLoad load = Loads.drum();
    try (PDDocument document = read(drawing(load))) {
      Layer layer = load.load().layer("L1").orElseThrow();
      PDPage page = document.getPage(2);
      double ratio = 4;
      assertThat(text(document, 3)).contains("L1", "1 : 4", "50 mm on paper = 200 mm of kiln");
      List<Box> curved = PaperReader.read(page).curved();
      Box shelf =
          curved.stream()
              .filter(box -> Math.abs(box.width() - 533 / ratio) <= TRUE_TO)
              .findFirst()
              .orElseThrow();
      for (Placement placement : layer.placements()) {
        double x = shelf.centre().x() + placement.at().x().millimetres() / ratio;
        double y = shelf.centre().y() - placement.at().y().millimetres() / ratio;
        double diameter = diameter(placement.pieceId()) / ratio;
        assertThat(curved)
            .as(placement.pieceId())
            .anySatisfy(
                box -> {
                  assertThat(box.centre().x()).isCloseTo(x, within(TRUE_TO));
                  assertThat(box.centre().y()).isCloseTo(y, within(TRUE_TO));
                  assertThat(box.width()).isCloseTo(diameter, within(TRUE_TO));
                });
      }
    }
  }

  /** Widest outlines of the batches on that layer, from the fixture. */
  private static double diameter(String pieceId) {
    return switch (pieceId.substring(0, 2)) {
      case "B3" -> 165;
      case "B6" -> 50;
      default -> 28;
    };
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  @Test
  void everyFontIsEmbeddedAndOnlyAsFarAsUsed() throws IOException {
    try (PDDocument document = read(drawing(Loads.small()))) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).isTrue();
          assertThat(font.getName()).matches("[A-Z]{6}\\+DejaVuSans(-Bold)?");
        }
      }
    }
  }

  @Test
  void saysOnEachPageWhichItIs() throws IOException {
    LoadDrawing drawing = drawing(Loads.cabinet());
    int pages = drawing.sheets().size();
    try (PDDocument document = read(drawing)) {
      for (int page = 1; page <= pages; page++) {
        assertThat(text(document, page)).contains("page " + page + " of " + pages);
      }
    }
  }

  @Test
  void holdsNoDate() throws IOException {
    try (PDDocument document = read(drawing(Loads.small()))) {
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(document.getDocumentInformation().getModificationDate()).isNull();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "ja-JP", "hi-IN-u-nu-deva"})
  void givesTheSameBytesInAnyLanguageAndTimeZone(String tag) {
    Locale language = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      byte[] plain = PdfSurface.bytes(drawing(Loads.small()));
      Locale.setDefault(Locale.forLanguageTag(tag));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertThat(PdfSurface.bytes(drawing(Loads.small()))).isEqualTo(plain);
      assertThat(SvgSurface.image(drawing(Loads.small()).sheets().get(2)))
          .contains("viewBox=\"0 0 210 297\"");
    } finally {
      Locale.setDefault(language);
      TimeZone.setDefault(zone);
    }
  }
}
