package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

class LoadDrawingTest {
  /** Most printers leave 4 to 6 mm free, some 12 (common practice, no source). */
  private static final double LEAST_MARGIN = 12;

  private static final Map<String, Supplier<InspectedLoad>> LOADS =
      Map.of(
          "small", Loads::small,
          "drum", Loads::drum,
          "cabinet", Loads::cabinet,
          "sixty", Loads::sixty,
          "crowd", Loads::crowd,
          "five hundred", Loads::fiveHundred,
          "hostile", Loads::hostile,
          "empty", Loads::empty,
          "tower", Loads::tower);

  @TestFactory
  Stream<DynamicTest> everySheetKeepsItsMarginsAndItsWordsApart() {
    List<DynamicTest> tests = new ArrayList<>();
    for (String name : LOADS.keySet().stream().sorted().toList()) {
      for (PaperSize paper : PaperSize.values()) {
        for (LengthUnit unit : LengthUnit.values()) {
          tests.add(
              DynamicTest.dynamicTest(
                  name + " on " + paper + " in " + unit,
                  () -> check(LoadDrawing.of(LOADS.get(name).get(), paper, unit))));
        }
      }
    }
    return tests.stream();
  }

  private static void check(LoadDrawing drawing) {
    for (Sheet sheet : drawing.sheets()) {
      Box printed =
          new Box(
              LEAST_MARGIN,
              LEAST_MARGIN,
              sheet.width() - LEAST_MARGIN,
              sheet.height() - LEAST_MARGIN);
      for (Mark mark : sheet.marks()) {
        assertThat(printed.holds(Extent.of(mark))).as("within the margins: %s", mark).isTrue();
      }
      List<Mark.Text> texts = texts(sheet);
      for (int i = 0; i < texts.size(); i++) {
        assertThat(texts.get(i).size()).isGreaterThanOrEqualTo(8);
        for (Mark.Text later : texts.subList(i + 1, texts.size())) {
          assertThat(texts.get(i).box().overlaps(later.box()))
              .as("apart: %s and %s", texts.get(i), later)
              .isFalse();
        }
      }
    }
  }

  private static List<Mark.Text> texts(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }

  private static List<String> words(Sheet sheet) {
    return texts(sheet).stream().map(Mark.Text::words).toList();
  }

  private static LoadDrawing metric(InspectedLoad load) {
    return LoadDrawing.of(load, PaperSize.A4, LengthUnit.MILLIMETRES);
  }

  @Test
  void showsOneLayerASheetFromTheBottomUpAndSideBySideColumnsLevelByLevel() {
    assertThat(metric(Loads.drum()).sheets().stream().flatMap(sheet -> sheet.layerId().stream()))
        .containsExactly("L1", "L2", "L3", "L4", "L5");
    assertThat(metric(Loads.cabinet()).sheets().stream().flatMap(sheet -> sheet.layerId().stream()))
        .containsExactly("L1", "M1", "L2", "M2", "L3", "M3");
  }

  @Test
  void saysWhatIsFiredHowManyGoInAndHowManyWait() {
    assertThat(words(metric(Loads.small()).sheets().get(0)))
        .contains(
            "Clay Lane Pottery",
            "Big drum: glaze firing to cone 6, oxidation, 2026-03-09",
            "5 of 7 in, 2 wait",
            "posts 152.4 + 25.4");
  }

  @Test
  void countsShelvesPostsAndCatchersToFetch() {
    List<String> words = words(metric(Loads.small()).sheets().get(0));
    assertThat(words)
        .containsSubsequence(
            "Fetch",
            "1 ×",
            "Full round 533",
            "2 ×",
            "Half round 533",
            "6 ×",
            "152.4 mm post",
            "3 ×",
            "50.8 mm post",
            "6 ×",
            "25.4 mm post",
            "1 ×",
            "catcher");
  }

  @Test
  void givesTheReasonAndTheMendForWhatWaits() {
    assertThat(words(metric(Loads.small()).sheets().get(1)))
        .contains(
            "1 × Bottle vase in Celadon, batch B3",
            "Two more posts of 25.4 mm would make a layer tall enough.",
            "1 × Mug in Tenmoku, batch B1, order Vale",
            "The room went to other ware.");
  }

  @Test
  void warnsOnTheCover() {
    String cover = String.join(" ", words(metric(Loads.small()).sheets().get(0)));
    for (String caution : Cautions.LINES) {
      assertThat(cover).contains(caution);
    }
  }

  @Test
  void tellsPlacesOnARoundShelfByTheClockAndOnARectangleFromItsEdges() {
    Sheet round = metric(Loads.small()).sheets().get(2);
    // 60 mm straight to the front of the centre.
    assertThat(words(round)).containsSubsequence("3", "6:00", "60", "→ 2:00");
    Sheet slab = metric(Loads.cabinet()).sheets().get(2);
    // The tray's axis is 140 mm from the left and 420 mm from the front of a slab of 400 × 500 mm.
    assertThat(words(slab)).containsSubsequence("1", "140", "420", "→ 3:00");
  }

  @Test
  void putsTheJudgesFiguresIntoTheHeadOfALayer() {
    Sheet sheet = metric(Loads.small()).sheets().get(2);
    assertThat(String.join(" ", words(sheet)))
        .contains(
            "Smallest gap 8.4 mm Clear height 152.4 mm Top of shelf at 69.8 mm Weight on it 2.2 kg");
  }

  @Test
  void leavesTheSmallestGapOutWhereTheJudgeMeasuredNone() {
    Sheet sheet = metric(Loads.crowd()).sheets().get(2);
    assertThat(String.join(" ", words(sheet)))
        .contains("Clear height 616.2 mm")
        .doesNotContain("Smallest gap");
  }

  @Test
  void keepsSixtyPiecesAndTheirKeyOnOneSheet() {
    LoadDrawing drawing = metric(Loads.sixty());
    List<Sheet> sheets =
        drawing.sheets().stream()
            .filter(sheet -> sheet.layerId().equals(Optional.of("L1")))
            .toList();
    assertThat(sheets).hasSize(1);
    for (int number = 1; number <= 60; number++) {
      String written = Integer.toString(number);
      // Once on the piece and once in the key.
      assertThat(words(sheets.get(0)).stream().filter(written::equals).count())
          .as("number %s", written)
          .isGreaterThanOrEqualTo(2);
    }
  }

  @Test
  void namesEveryOneOfFiveHundredPiecesInTheKey() {
    LoadDrawing drawing = metric(Loads.crowd());
    List<String> words = drawing.sheets().stream().flatMap(sheet -> words(sheet).stream()).toList();
    for (int number = 1; number <= 500; number++) {
      assertThat(words).contains(Integer.toString(number));
    }
    assertThat(PdfSurface.bytes(drawing)).startsWith('%', 'P', 'D', 'F');
  }

  @Test
  void drawsALoadOfFiveHundredPiecesOnASheetForEachLayer() {
    LoadDrawing drawing = metric(Loads.fiveHundred());
    assertThat(words(drawing.sheets().get(0))).contains("500 of 500 in, none waits");
    assertThat(drawing.sheets().stream().flatMap(sheet -> sheet.layerId().stream()).distinct())
        .containsExactly("A1", "B1", "A2", "B2", "A3", "B3", "A4", "B4", "A5", "B5");
    assertThat(PdfSurface.bytes(drawing)).startsWith('%', 'P', 'D', 'F');
  }

  @Test
  void drawsTheSameLoadTheSameWay() {
    assertThat(metric(Loads.drum())).isEqualTo(metric(Loads.drum()));
  }
}
