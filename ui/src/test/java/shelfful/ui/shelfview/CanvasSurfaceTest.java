package shelfful.ui.shelfview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import shelfful.drawing.Anchor;
import shelfful.drawing.Ink;
import shelfful.drawing.Look;
import shelfful.drawing.Mark;
import shelfful.drawing.Pen;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;
import shelfful.drawing.Typeface;
import shelfful.drawing.Weight;
import shelfful.ui.DemoPlan;

class CanvasSurfaceTest {
  private static final Ink RED = new Ink(200, 30, 30);
  private static final Pen WIDE = new Pen(1, Ink.BLACK, List.of());

  private static PaintedSheet painted(Mark... marks) {
    return new PaintedSheet(new Sheet(60, 40, Optional.empty(), Optional.empty(), List.of(marks)));
  }

  @Test
  void paintsTheDemoPlanWhereTheDisplayListSays() {
    List<String> wrong = new ArrayList<>();
    int seen = 0;
    for (Sheet sheet : DemoPlan.drawing().sheets()) {
      PaintedSheet painted = new PaintedSheet(sheet);
      for (Sample sample : Sample.of(sheet)) {
        seen++;
        if (!painted.at(sample.spot()).equals(sample.ink())) {
          wrong.add(sample + " but is " + painted.at(sample.spot()));
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(seen).as("spots looked at").isGreaterThan(60);
  }

  @Test
  void everyLineOfWordsIsAsWideAsItWasMeasured() {
    for (Weight weight : Weight.values()) {
      String words = "Handle → 12:38 ½ glaze H";
      double width = measured(words, weight);
      PaintedSheet painted = painted(text(5, words, weight, width));
      double[] dark = painted.darkBetween(15, 25);
      // An H of this typeface stands about a tenth of its size off both ends.
      assertThat(dark[0]).isBetween(5.0, 5.6);
      assertThat(dark[1]).isBetween(5 + width - 0.6, 5 + width);
    }
  }

  /** The widths the font file itself gives its letters, added up; in millimetres at 8 points. */
  private static double measured(String words, Weight weight) {
    try (InputStream file = Typeface.file(weight)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      double units = 0;
      for (int codePoint : words.codePoints().toArray()) {
        units += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(codePoint));
      }
      return units / font.getUnitsPerEm() * 8 * Typeface.MILLIMETRES_PER_POINT;
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static Mark.Text text(double x, String words, Weight weight, double width) {
    return new Mark.Text(new Spot(x, 22), words, 8, weight, Anchor.START, width, Ink.BLACK);
  }

  @Test
  void wordsEndAtTheirSpotOrStandInTheMiddleOfIt() {
    double width = measured("HHHH", Weight.BOLD);
    Mark.Text start = text(30, "HHHH", Weight.BOLD, width);
    Mark.Text end =
        new Mark.Text(new Spot(30, 22), "HHHH", 8, Weight.BOLD, Anchor.END, width, Ink.BLACK);
    Mark.Text middle =
        new Mark.Text(new Spot(30, 22), "HHHH", 8, Weight.BOLD, Anchor.MIDDLE, width, Ink.BLACK);
    double from = painted(start).darkBetween(15, 25)[0];
    assertThat(painted(end).darkBetween(15, 25)[0]).isCloseTo(from - width, within(0.2));
    assertThat(painted(middle).darkBetween(15, 25)[0]).isCloseTo(from - width / 2, within(0.2));
  }

  @Test
  void anOvalTurnsAnticlockwise() {
    Look look = new Look(Optional.empty(), Optional.of(RED));
    PaintedSheet painted = painted(new Mark.Oval(new Spot(30, 20), 15, 4, 30, look));
    assertThat(painted.at(new Spot(30 + 12, 20 - 7))).isEqualTo(RED);
    assertThat(painted.at(new Spot(30 - 12, 20 + 7))).isEqualTo(RED);
    assertThat(painted.at(new Spot(30 + 12, 20 + 7))).isEqualTo(Ink.WHITE);
  }

  @Test
  void aCapsuleHasRoundEndsOfItsWidth() {
    Look look = new Look(Optional.empty(), Optional.of(RED));
    PaintedSheet painted = painted(new Mark.Capsule(new Spot(20, 30), new Spot(40, 10), 8, look));
    assertThat(painted.at(new Spot(30, 20))).isEqualTo(RED);
    assertThat(painted.at(new Spot(30 + 2.5, 20 + 2.5))).isEqualTo(RED);
    assertThat(painted.at(new Spot(30 + 3.2, 20 + 3.2))).isEqualTo(Ink.WHITE);
    assertThat(painted.at(new Spot(20 - 2.6, 30 + 2.6))).isEqualTo(RED);
    assertThat(painted.at(new Spot(20 - 3.2, 30 + 3.2))).isEqualTo(Ink.WHITE);
  }

  @Test
  void dashesAreDrawnAndLeftOutInTurn() {
    Pen dashed = new Pen(1, Ink.BLACK, List.of(4.0, 6.0));
    PaintedSheet painted = painted(new Mark.Line(new Spot(5, 20), new Spot(55, 20), dashed));
    assertThat(painted.at(new Spot(7, 20))).isEqualTo(Ink.BLACK);
    assertThat(painted.at(new Spot(12, 20))).isEqualTo(Ink.WHITE);
    assertThat(painted.at(new Spot(17, 20))).isEqualTo(Ink.BLACK);
  }

  @Test
  void anOpenPathIsNotFilledAndLaterMarksLieOverEarlierOnes() {
    Look both = new Look(Optional.of(WIDE), Optional.of(RED));
    List<Spot> corners = List.of(new Spot(10, 10), new Spot(30, 10), new Spot(30, 30));
    PaintedSheet open = painted(new Mark.Path(corners, false, both));
    assertThat(open.at(new Spot(26, 14))).isEqualTo(Ink.WHITE);
    assertThat(open.at(new Spot(20, 10))).isEqualTo(Ink.BLACK);
    PaintedSheet closed =
        painted(
            new Mark.Path(corners, true, both),
            new Mark.Hatching(
                List.of(new Mark.Hatching.Line(new Spot(20, 14), new Spot(29, 14))), WIDE));
    assertThat(closed.at(new Spot(26, 18))).isEqualTo(RED);
    assertThat(closed.at(new Spot(26, 14))).isEqualTo(Ink.BLACK);
  }
}
