package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.measure.LengthUnit;
import shelfful.ware.Outline;

/**
 * The demo plans printed and read back: every piece of every layer is on paper where the plan says,
 * as large as its form says, to 0.1 mm, at the scale that is printed beside it.
 */
class PaperTruthTest {
  private static final double TRUE_TO = 0.1;

  static Stream<Arguments> prints() {
    List<Arguments> prints = new ArrayList<>();
    for (String name : DemoPlans.NAMES) {
      for (PaperSize paper : PaperSize.values()) {
        prints.add(Arguments.of(name, new SheetFormat(paper, paper == PaperSize.LETTER)));
      }
    }
    return prints.stream();
  }

  @ParameterizedTest
  @MethodSource("prints")
  void everyPieceIsOnPaperWhereThePlanSays(String name, SheetFormat format) throws IOException {
    InspectedLoad load = DemoPlans.of(name);
    Setting setting = new Setting(load);
    Printing printing =
        new Printing(format, LengthUnit.MILLIMETRES, Edition.UNSAID, ProgramNote.BLANK);
    LoadDrawing drawing = LoadDrawing.of(load, printing);
    int read = 0;
    try (PDDocument document = Loader.loadPDF(PdfSurface.bytes(drawing))) {
      assertThat(document.getNumberOfPages()).isEqualTo(drawing.sheets().size());
      for (Layer layer : setting.layers()) {
        int page = page(drawing, layer.id());
        PlanView view = drawing.sheets().get(page).plan().orElseThrow();
        List<Box> curved = PaperReader.read(document.getPage(page)).curved();
        assertThat(scale(drawing.sheets().get(page))).isEqualTo(view.ratio());
        for (SetPiece piece : setting.on(layer)) {
          assertThat(curved)
              .as(layer.id() + " " + piece.piece().id())
              .anyMatch(box -> isThere(box, piece, view));
          read++;
        }
      }
    }
    assertThat(read).isEqualTo(load.load().placed());
  }

  private static int page(LoadDrawing drawing, String layerId) {
    return IntStream.range(0, drawing.sheets().size())
        .filter(i -> drawing.sheets().get(i).layerIds().contains(layerId))
        .findFirst()
        .orElseThrow();
  }

  /** The n of the 1 : n that a reader finds on the page. */
  private static double scale(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).words())
        .filter(words -> words.startsWith("1 : "))
        .mapToDouble(words -> Double.parseDouble(words.substring(4)))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Whether a curve read from the page is the piece: as far from the chamber's centre as in the
   * kiln, as wide and deep as its widest outline turned.
   */
  private static boolean isThere(Box box, SetPiece piece, PlanView view) {
    double x = view.origin().x() + piece.x() / view.ratio();
    double y = view.origin().y() - piece.y() / view.ratio();
    Outline outline = piece.body();
    double turn = piece.placement().turn().radians();
    double a = outline.width().millimetres() / 2 / view.ratio();
    double b = outline.depth().millimetres() / 2 / view.ratio();
    // The box round an ellipse turned by t is 2 √(a² cos² t + b² sin² t) wide.
    double width = 2 * Math.hypot(a * Math.cos(turn), b * Math.sin(turn));
    double height = 2 * Math.hypot(a * Math.sin(turn), b * Math.cos(turn));
    return Math.abs(box.centre().x() - x) <= TRUE_TO
        && Math.abs(box.centre().y() - y) <= TRUE_TO
        && Math.abs(box.width() - width) <= TRUE_TO
        && Math.abs(box.height() - height) <= TRUE_TO;
  }
}
