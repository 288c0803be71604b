package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import shelfful.measure.LengthUnit;

class HostileNamesTest {
  private static LoadDrawing drawing() {
    return LoadDrawing.of(Loads.hostile(), PaperSize.A4, LengthUnit.MILLIMETRES);
  }

  private static String words() {
    return drawing().sheets().stream()
        .flatMap(sheet -> sheet.marks().stream())
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).words())
        .collect(Collectors.joining("\n"));
  }

  @Test
  void printsNoControlOrDirectionCharacter() {
    assertThat(words().replace("\n", "").codePoints())
        .noneMatch(
            one ->
                Character.getType(one) == Character.CONTROL
                    || Character.getType(one) == Character.FORMAT
                    || Character.getType(one) == Character.SURROGATE);
  }

  @Test
  void printsABoxForEachLetterTheTypefaceLacks() {
    assertThat(words()).contains("▯▯").doesNotContain("漢");
  }

  @Test
  void shortensLongNamesWithAnEllipsis() {
    assertThat(words()).contains("…");
  }

  @Test
  void canBeReadBackFromThePdf() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfSurface.bytes(drawing()))) {
      assertThat(new PDFTextStripper().getText(document)).contains("<img src=x onerror=alert(1)>");
    }
  }

  @Test
  void acceptsALetterFromEveryBlockOfUnicode() {
    Wording wording = TextStyle.BODY.wording();
    for (int start = 0; start < 0x110000; start += 0x40) {
      StringBuilder text = new StringBuilder("a");
      text.appendCodePoint(start).appendCodePoint(start + 0x1f).appendCodePoint(start + 0x3f);
      String clean = wording.clean(text.toString());
      assertThat(clean).startsWith("a");
      assertThat(clean.codePoints()).allMatch(Typeface.of(Weight.REGULAR)::has);
      assertThat(wording.width(clean)).isFinite();
    }
  }
}
