package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.measure.LengthUnit;

/**
 * The display lists of a small load and of the demo plans against stored ones, to a tenth of a
 * millimetre. After a wanted change look at the sheets, then copy the new lists from {@code
 * target/golden}.
 */
class SheetGoldenTest {
  @ParameterizedTest
  @CsvSource({"A4,MILLIMETRES", "LETTER,INCHES"})
  void drawsTheSmallLoadAsStored(PaperSize paper, LengthUnit unit) throws IOException {
    isAsStored("small", LoadDrawing.of(Loads.small(), paper, unit), paper);
  }

  @ParameterizedTest
  @CsvSource({
    "list-60,A4,MILLIMETRES", "list-60,LETTER,INCHES",
    "list-200,A4,MILLIMETRES", "list-200,LETTER,INCHES",
    "list-500,A4,MILLIMETRES", "list-500,LETTER,INCHES"
  })
  void drawsTheDemoPlansAsStored(String name, PaperSize paper, LengthUnit unit) throws IOException {
    isAsStored(name, LoadDrawing.of(DemoPlans.of(name), paper, unit), paper);
  }

  private static void isAsStored(String load, LoadDrawing drawing, PaperSize paper)
      throws IOException {
    String name = load + "-" + paper.name().toLowerCase(Locale.ROOT) + ".txt";
    String drawn =
        drawing.sheets().stream().map(SheetGoldenTest::list).collect(Collectors.joining("\n"));
    Path target = Path.of("target", "golden", name);
    Files.createDirectories(target.getParent());
    Files.writeString(target, drawn);
    assertThat(drawn).isEqualTo(stored(name));
  }

  private static String stored(String name) throws IOException {
    try (InputStream stream = SheetGoldenTest.class.getResourceAsStream(name)) {
      assertThat(stream).as("stored list " + name).isNotNull();
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String list(Sheet sheet) {
    String head = "sheet " + tenths(sheet.width()) + " x " + tenths(sheet.height());
    String layer = sheet.layerId().map(id -> " layer " + id).orElse("");
    return head
        + layer
        + sheet.marks().stream()
            .map(SheetGoldenTest::line)
            .collect(Collectors.joining("\n", "\n", "\n"));
  }

  private static String line(Mark mark) {
    if (mark instanceof Mark.Text text) {
      return "text "
          + spot(text.start())
          + " "
          + tenths(text.size())
          + "pt "
          + text.weight()
          + " "
          + text.words();
    }
    Box box = Extent.of(mark);
    String kind = mark.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    String covers =
        spot(new Spot(box.left(), box.top())) + " to " + spot(new Spot(box.right(), box.bottom()));
    String size =
        mark instanceof Mark.Hatching hatching
            ? " strokes " + hatching.strokes().size()
            : mark instanceof Mark.Path path ? " corners " + path.corners().size() : "";
    return kind + " " + covers + size;
  }

  private static String spot(Spot spot) {
    return tenths(spot.x()) + "," + tenths(spot.y());
  }

  private static String tenths(double millimetres) {
    String text = String.format(Locale.ROOT, "%.1f", millimetres);
    return text.equals("-0.0") ? "0.0" : text;
  }
}
