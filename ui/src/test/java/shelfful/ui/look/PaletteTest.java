package shelfful.ui.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.drawing.Ink;

/**
 * Contrast by WCAG 2.2: (L1 + 0.05) / (L2 + 0.05), 4.5 for letters (1.4.3), 3 for edges (1.4.11).
 */
class PaletteTest {
  private static final Path FOLDER = Path.of("src", "main", "resources", "shelfful", "ui", "look");
  private static final Pattern COLOUR = Pattern.compile("([a-z-]+): #([0-9a-f]{6});");
  private static final List<String> GROUNDS = List.of("bench", "desktop", "paper", "glow");

  private static Map<String, Ink> palette(String file) {
    try {
      Map<String, Ink> colours = new TreeMap<>();
      Matcher matcher = COLOUR.matcher(Files.readString(FOLDER.resolve(file)));
      while (matcher.find()) {
        int bits = Integer.parseInt(matcher.group(2), 16);
        colours.put(matcher.group(1), new Ink(bits >> 16, bits >> 8 & 0xff, bits & 0xff));
      }
      return colours;
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static double contrast(Ink one, Ink other) {
    double lighter = Math.max(one.luminance(), other.luminance());
    double darker = Math.min(one.luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  @ParameterizedTest
  @ValueSource(strings = {"light.css", "dark.css"})
  void lettersStandOutFromEveryGround(String file) {
    Map<String, Ink> palette = palette(file);
    for (String ground : GROUNDS) {
      for (String letters : List.of("ink", "quiet", "fault")) {
        assertThat(contrast(palette.get(letters), palette.get(ground)))
            .as(letters + " on " + ground)
            .isGreaterThanOrEqualTo(4.5);
      }
    }
    assertThat(contrast(palette.get("fault"), palette.get("fault-ground")))
        .isGreaterThanOrEqualTo(4.5);
    assertThat(contrast(palette.get("ink"), palette.get("fault-ground")))
        .isGreaterThanOrEqualTo(4.5);
    assertThat(contrast(palette.get("on-ember"), palette.get("ember"))).isGreaterThanOrEqualTo(4.5);
    assertThat(contrast(palette.get("on-ember"), palette.get("ember-dark")))
        .isGreaterThanOrEqualTo(4.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"light.css", "dark.css"})
  void edgesAndTheFocusStandOut(String file) {
    Map<String, Ink> palette = palette(file);
    for (String ground : List.of("bench", "paper")) {
      assertThat(contrast(palette.get("edge"), palette.get(ground))).as(ground).isGreaterThan(3);
      assertThat(contrast(palette.get("ember"), palette.get(ground))).as(ground).isGreaterThan(3);
    }
  }

  @ParameterizedTest
  @EnumSource
  void wordsAndEdgesStandOutForEyesOfEveryKind(ColourVision eyes) {
    for (String file : List.of("light.css", "dark.css")) {
      Map<String, Ink> palette = palette(file);
      for (String ground : GROUNDS) {
        for (String letters : List.of("ink", "quiet", "fault")) {
          assertThat(eyes.contrast(palette.get(letters), palette.get(ground)))
              .as(file + ": " + letters + " on " + ground)
              .isGreaterThanOrEqualTo(4.5);
        }
      }
      for (String ground : List.of("bench", "paper")) {
        assertThat(eyes.contrast(palette.get("ember"), palette.get(ground)))
            .as(file + ": ember on " + ground)
            .isGreaterThan(3);
      }
    }
  }

  @Test
  void bothPalettesNameTheSameColours() {
    assertThat(palette("dark.css").keySet()).isEqualTo(palette("light.css").keySet()).hasSize(13);
  }

  @Test
  void theContrastOfBlackAndWhiteIsTwentyOne() {
    assertThat(contrast(Ink.BLACK, Ink.WHITE)).isEqualTo(21);
  }
}
