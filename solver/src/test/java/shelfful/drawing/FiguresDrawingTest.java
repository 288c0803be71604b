package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shelfful.figures.CauseCount;
import shelfful.figures.FiringFigures;
import shelfful.figures.PotteryFigures;

/** The sheet of figures: bars as long as what they say, words apart from each other. */
class FiguresDrawingTest {
  private static PotteryFigures figures(int firings) {
    List<FiringFigures> all = new ArrayList<>();
    for (int i = 0; i < firings; i++) {
      all.add(
          new FiringFigures(
              "F" + i,
              LocalDate.of(2026, 1, 1).plusDays(7L * i),
              50 * (1 + i % 2),
              Optional.of(120),
              40,
              5,
              5,
              OptionalDouble.empty(),
              i % 3 == 0 ? OptionalDouble.empty() : OptionalDouble.of(25)));
    }
    return new PotteryFigures(
        all, List.of(new CauseCount("crawled", 8, 0), new CauseCount("cracked", 1, 3)));
  }

  private static Sheet sheet(int firings) {
    LoadDrawing drawing = FiguresDrawing.of(figures(firings), "Our pottery", PaperSize.A4);
    assertThat(drawing.sheets()).hasSize(1);
    return drawing.sheets().get(0);
  }

  private static List<Mark.Text> texts(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }

  @Test
  void everyMarkLiesWithinTheMarginsAndNoWordsOverlap() {
    for (int firings : new int[] {0, 1, 7, 16, 60}) {
      Sheet sheet = sheet(firings);
      Box printed = new Box(12, 12, sheet.width() - 12, sheet.height() - 12);
      sheet.marks().forEach(mark -> assertThat(printed.holds(Extent.of(mark))).isTrue());
      List<Mark.Text> texts = texts(sheet);
      for (int i = 0; i < texts.size(); i++) {
        for (Mark.Text other : texts.subList(i + 1, texts.size())) {
          assertThat(texts.get(i).box().overlaps(other.box()))
              .as("%s and %s", texts.get(i).words(), other.words())
              .isFalse();
        }
      }
    }
  }

  @Test
  void aBarOfTwiceAsManyPiecesIsTwiceAsHigh() {
    List<Box> bars =
        sheet(2).marks().stream()
            .filter(Mark.Path.class::isInstance)
            .map(mark -> Box.round(((Mark.Path) mark).corners()))
            .toList();
    assertThat(bars.get(1).height() / bars.get(0).height()).isCloseTo(2, within(1e-9));
  }

  @Test
  void tellsEachFigureItDrawsAndThatOthersAreNotShown() {
    List<String> words = texts(sheet(60)).stream().map(Mark.Text::words).toList();
    assertThat(words)
        .contains("Our pottery", "The latest 16 of 60", "crawled", "8 (0 lost)", "4 (3 lost)")
        .contains("50", "100", "120");
  }
}
