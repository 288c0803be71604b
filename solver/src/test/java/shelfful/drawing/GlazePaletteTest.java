package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.studio.Studio;
import shelfful.ware.Glaze;

class GlazePaletteTest {
  private static final List<Spot> SQUARE =
      List.of(new Spot(10, 30), new Spot(30, 30), new Spot(30, 10), new Spot(10, 10));

  @Test
  void givesEachGlazeOfALoadALetterAndAHatchingOfItsOwn() {
    Setting setting = new Setting(Loads.cabinet());
    GlazePalette palette = new GlazePalette(setting);
    Set<GlazeSign> signs = setting.placed().stream().map(palette::of).collect(Collectors.toSet());
    assertThat(signs).hasSize(9);
    assertThat(signs).extracting(GlazeSign::letter).doesNotHaveDuplicates();
    assertThat(signs).extracting(GlazeSign::hatch).doesNotHaveDuplicates();
  }

  /** Grey print has no colours: the letter must do where there are more glazes than hatchings. */
  @Test
  void tellsTwentyGlazesOfOneLetterApartWithoutColour() {
    List<Glaze> glazes = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      glazes.add(Pottery.glaze("g" + i, "Glaze " + i, i == 7 ? "G5" : "A", "#808080", false));
    }
    Studio studio = Pottery.studio("Twenty", Pottery.forms(), glazes, Pottery.drum("Big drum"));
    HandMadeLoad load = new HandMadeLoad(studio, "drum");
    for (int i = 0; i < 20; i++) {
      load.batch("B" + i, "cup", "g" + i, 1, null).set("B" + i, -200 + 20 * i, 0);
    }
    Setting setting = new Setting(load.layer("L1", "base", 1, 0, 70, "p51").stamped());
    GlazePalette palette = new GlazePalette(setting);
    assertThat(setting.placed().stream().map(piece -> palette.of(piece).letter()))
        .hasSize(20)
        .doesNotHaveDuplicates()
        .contains("A", "G5");
  }

  @Test
  void drawsEveryHatchingUnlikeAnyOther() {
    Set<Set<String>> drawn = new HashSet<>();
    for (Hatch hatch : Hatch.values()) {
      drawn.add(
          hatch.strokes(SQUARE).stream()
              .map(GlazePaletteTest::rounded)
              .collect(Collectors.toSet()));
    }
    assertThat(drawn).hasSize(Hatch.values().length).hasSizeGreaterThanOrEqualTo(8);
  }

  private static String rounded(Mark.Hatching.Line line) {
    return Math.round(line.from().x() * 10)
        + " "
        + Math.round(line.from().y() * 10)
        + " "
        + Math.round(line.to().x() * 10)
        + " "
        + Math.round(line.to().y() * 10);
  }

  @ParameterizedTest
  @EnumSource(Hatch.class)
  void keepsHatchingInsideItsShape(Hatch hatch) {
    List<Mark.Hatching.Line> strokes = hatch.strokes(SQUARE);
    List<Spot> ends = new ArrayList<>();
    strokes.forEach(one -> ends.addAll(List.of(one.from(), one.to())));
    assertThat(ends)
        .isNotEmpty()
        .allMatch(end -> end.x() > 10 && end.x() < 30 && end.y() > 10 && end.y() < 30);
  }

  @Test
  void fillsASquareWithRisingLinesAsFarApartAsSaid() {
    // Lines at 45° that are 2 mm apart cross the 28.3 mm diagonal of a 20 mm square: 7 on either
    // side of the middle.
    assertThat(HatchFamily.lines(45, 2).strokes(SQUARE)).hasSize(13);
    assertThat(HatchFamily.lines(45, 2).strokes(SQUARE))
        .allSatisfy(
            one -> {
              assertThat(one.to().x()).isGreaterThan(one.from().x());
              assertThat(one.to().y()).isLessThan(one.from().y());
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"#000000", "#0000ff", "#ff0000", "#4a2c1a", "#ffffff", "no colour"})
  void keepsBlackOutlinesThreeTimesAsBrightAsTheirFilling(String colour) {
    // Contrast (L1 + 0.05) / (L2 + 0.05) of at least 3 for graphics: WCAG 2.2, 1.4.11; 4.5 for the
    // text on it, 1.4.3.
    double contrast = (Ink.ofHex(colour).tint().luminance() + 0.05) / 0.05;
    assertThat(contrast).isGreaterThan(4.5);
  }
}
