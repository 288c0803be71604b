package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
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

  private static final String LIMIT =
      "112 in; no setting can hold more than 169 (the height of the chamber).";

  private static final Map<String, Supplier<InspectedLoad>> LOADS =
      Map.ofEntries(
          Map.entry("small", Loads::small),
          Map.entry("drum", Loads::drum),
          Map.entry("cabinet", Loads::cabinet),
          Map.entry("sixty", Loads::sixty),
          Map.entry("crowd", Loads::crowd),
          Map.entry("five hundred", Loads::fiveHundred),
          Map.entry("hostile", Loads::hostile),
          Map.entry("empty", Loads::empty),
          Map.entry("tower", Loads::tower),
          Map.entry("list-60", () -> DemoPlans.of("list-60")),
          Map.entry("list-200", () -> DemoPlans.of("list-200")),
          Map.entry("list-500", () -> DemoPlans.of("list-500")));

  @TestFactory
  Stream<DynamicTest> everySheetKeepsItsMarginsAndItsWordsApart() {
    List<DynamicTest> tests = new ArrayList<>();
    for (String name : LOADS.keySet().stream().sorted().toList()) {
      for (PaperSize paper : PaperSize.values()) {
        for (boolean landscape : List.of(false, true)) {
          SheetFormat format = new SheetFormat(paper, landscape);
          for (LengthUnit unit : LengthUnit.values()) {
            tests.add(
                DynamicTest.dynamicTest(
                    name + " on " + format + " in " + unit,
                    () -> check(LoadDrawing.of(LOADS.get(name).get(), printing(format, unit)))));
          }
        }
      }
    }
    return tests.stream();
  }

  private static Printing printing(SheetFormat format, LengthUnit unit) {
    Edition edition = new Edition(Optional.of("4"), Optional.of(LocalDate.of(2026, 3, 8)));
    ProgramNote program =
        new ProgramNote(
            Optional.of("Slow glaze " + Loads.HOSTILE), Optional.of("9"), Optional.empty());
    return new Printing(format, unit, edition, program, Optional.of(LIMIT));
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
            "→ Two more posts of 25.4 mm would make a layer tall enough.",
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
  void saysWhichPiecesStandOnCatchers() {
    assertThat(words(metric(Loads.small()).sheets().get(2)))
        .contains("B Chun blue, on catchers, batch B2");
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
    // A hundred pieces a level of twenty batches by turns: the levels are the same again and again.
    assertThat(drawing.sheets().stream().map(Sheet::layerIds).filter(ids -> !ids.isEmpty()))
        .containsOnly(
            List.of("A1", "A2", "A3", "A4"),
            List.of("B1", "B2", "B3", "B4"),
            List.of("A5"),
            List.of("B5"));
    assertThat(PdfSurface.bytes(drawing)).startsWith('%', 'P', 'D', 'F');
  }

  @Test
  void oneSheetDoesForLayersThatAreAlike() {
    LoadDrawing drawing = metric(Loads.alike(0));
    List<Sheet> plans =
        drawing.sheets().stream().filter(sheet -> sheet.plan().isPresent()).toList();
    assertThat(plans)
        .extracting(Sheet::layerIds)
        .containsExactly(List.of("L1", "L2"), List.of("L3"));
    assertThat(words(plans.get(0)))
        .contains("L1, L2", "×2", "Column A, levels 1, 2", "layers 1, 2 of 3", "69.8, 241.2");
  }

  @Test
  void aTenthOfAMillimetreMakesLayersUnlike() {
    LoadDrawing drawing = metric(Loads.alike(0.1));
    assertThat(drawing.sheets().stream().map(Sheet::layerIds).filter(ids -> !ids.isEmpty()))
        .containsExactly(List.of("L1"), List.of("L2"), List.of("L3"));
  }

  @Test
  void everyPageNamesThePlanTheRevisionAndTheDay() {
    String mark = PlanMark.of(Loads.drum().load()).shortForm();
    LoadDrawing drawing =
        LoadDrawing.of(
            Loads.drum(), printing(SheetFormat.upright(PaperSize.A4), LengthUnit.MILLIMETRES));
    assertThat(drawing.sheets())
        .allSatisfy(
            sheet ->
                assertThat(words(sheet)).contains("plan " + mark + ", revision 4, 2026-03-08"));
  }

  @Test
  void aPlanInWhichOnePieceMovedHasAnotherMark() {
    String mark = PlanMark.of(Loads.alike(0).load()).shortForm();
    assertThat(mark).matches("[2-9A-Z]{3}-[2-9A-Z]{3}");
    assertThat(PlanMark.of(Loads.alike(0.1).load()).shortForm()).isNotEqualTo(mark);
    assertThat(PlanMark.of(Loads.alike(0).load()).shortForm()).isEqualTo(mark);
  }

  @Test
  void writesWhatTheControllerIsSetToOrLeavesABlank() {
    ProgramNote note =
        new ProgramNote(Optional.of("Slow glaze"), Optional.of("9"), Optional.empty());
    SheetFormat format = SheetFormat.upright(PaperSize.A4);
    Printing printing = new Printing(format, LengthUnit.MILLIMETRES, Edition.UNSAID, note);
    assertThat(words(LoadDrawing.of(Loads.small(), printing).sheets().get(0)))
        .containsSubsequence("Program", "Slow glaze", "Hours up", "9", "Hours down");
  }

  @Test
  void saysOnTheCoverHowNearTheLoadComesToWhatIsPossible() {
    SheetFormat format = SheetFormat.upright(PaperSize.A4);
    Printing told = printing(format, LengthUnit.MILLIMETRES);
    assertThat(words(LoadDrawing.of(Loads.small(), told).sheets().get(0))).contains(LIMIT);
    assertThat(PhonePage.html(Loads.small(), told)).contains(LIMIT);
    Printing plain = Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES);
    assertThat(String.join(" ", words(LoadDrawing.of(Loads.small(), plain).sheets().get(0))))
        .doesNotContain("no setting");
  }

  @Test
  void listsWareByFormAndGlazeInLoadingOrder() {
    assertThat(words(metric(Loads.small()).sheets().get(1)))
        .containsSubsequence(
            "T Tenmoku", "Mug", "3", "2 on L1, 1 on L2", "B Chun blue", "Oval tray", "1 on L1");
  }

  @Test
  void aClockStandsRoundARoundShelfAndFiguresAlongTwoEdgesOfARectangle() {
    List<String> round = words(metric(Loads.small()).sheets().get(2));
    assertThat(round).contains("12", "4", "8");
    assertThat(String.join(" ", round)).contains("a light line every 50 mm");
    List<String> slab = words(metric(Loads.cabinet()).sheets().get(2));
    assertThat(slab).contains("50", "350", "450");
  }

  @Test
  void drawsTheSameLoadTheSameWay() {
    assertThat(metric(Loads.drum())).isEqualTo(metric(Loads.drum()));
  }
}
