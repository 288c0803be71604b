package shelfful.ui.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shelfful.drawing.Ink;
import shelfful.drawing.LayerList;
import shelfful.drawing.LayerPicture;
import shelfful.drawing.LoadLists;
import shelfful.drawing.Look;
import shelfful.drawing.Mark;
import shelfful.drawing.Pen;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;
import shelfful.ui.DemoPlan;

/**
 * What is told apart by eyes of every kind and on grey paper: contrasts by WCAG 2.2 (1.4.3 letters,
 * 1.4.11 edges), glazes by letter and hatching.
 */
class ColourVisionTest {
  /** The least width of the line round a piece, in millimetres of paper. */
  private static final double OUTLINE = 0.4;

  private final InspectedLoad load = DemoPlan.load();

  /** Every mark of the demo's layers as they are on the screen. */
  private List<Mark> marks() {
    LayerPicture picture = LayerPicture.of(load, LengthUnit.MILLIMETRES);
    List<Mark> marks = new ArrayList<>();
    for (String layer : picture.layerIds()) {
      marks.addAll(picture.layer(layer, LayerPicture.Marked.NOTHING).marks());
    }
    return marks;
  }

  private static Optional<Look> look(Mark mark) {
    if (mark instanceof Mark.Path path) {
      return Optional.of(path.look());
    } else if (mark instanceof Mark.Circle circle) {
      return Optional.of(circle.look());
    } else if (mark instanceof Mark.Oval oval) {
      return Optional.of(oval.look());
    }
    return mark instanceof Mark.Capsule capsule ? Optional.of(capsule.look()) : Optional.empty();
  }

  private Set<Ink> fills() {
    Set<Ink> fills = new HashSet<>();
    marks().stream().flatMap(mark -> look(mark).flatMap(Look::fill).stream()).forEach(fills::add);
    return fills;
  }

  /** Of pieces; what carries the next shelf is dashed, thinner and lighter. */
  private Stream<Ink> edges() {
    return marks().stream()
        .filter(mark -> mark instanceof Mark.Circle || mark instanceof Mark.Oval)
        .flatMap(mark -> look(mark).flatMap(Look::outline).stream())
        .filter(pen -> pen.width() >= OUTLINE)
        .map(Pen::ink);
  }

  /** Dark words and edges stand on light fillings, white ones on dark fillings. */
  @ParameterizedTest
  @EnumSource
  void piecesStandOutFromTheirFillingAndSoDoTheirWords(ColourVision eyes) {
    Set<Ink> fills = fills();
    assertThat(fills).as("the tints of the demo's glazes, and the shelf").hasSizeGreaterThan(4);
    Set<Ink> words = new HashSet<>();
    marks().stream()
        .filter(Mark.Text.class::isInstance)
        .forEach(mark -> words.add(((Mark.Text) mark).ink()));
    assertThat(words).isNotEmpty();
    assertThat(edges()).isNotEmpty();
    for (Ink fill : fills) {
      for (Ink word : words) {
        if (isLight(word) != isLight(fill)) {
          assertThat(eyes.contrast(word, fill)).as(word + " on " + fill).isGreaterThan(4.5);
        }
      }
      edges()
          .distinct()
          .filter(edge -> isLight(edge) != isLight(fill))
          .forEach(
              edge ->
                  assertThat(eyes.contrast(edge, fill)).as(edge + " on " + fill).isGreaterThan(3));
    }
    assertThat(fills).as("no filling of a middle grey").noneMatch(ColourVisionTest::isBetween);
  }

  private static boolean isLight(Ink ink) {
    return ink.luminance() > 0.5;
  }

  private static boolean isBetween(Ink ink) {
    return ink.luminance() > 0.1 && ink.luminance() < 0.5;
  }

  @Test
  void everyGlazeOfALoadHasALetterOfItsOwn() {
    Map<String, String> letters = new HashMap<>();
    for (LayerList layer : LoadLists.of(load, LengthUnit.MILLIMETRES).layers()) {
      for (LayerList.Row row : layer.rows()) {
        String letter = row.glaze().split(" ", 2)[0];
        String name = row.glaze().split(" ", 2)[1].replace(", on a catcher", "");
        assertThat(letters.merge(letter, name, (was, is) -> was)).isEqualTo(name);
      }
    }
    assertThat(letters).hasSizeGreaterThan(2);
  }

  /**
   * White stays white, because each row of the matrices adds up to one; and red and green, which
   * are far apart for most eyes, come near each other for eyes without long or middle cones (the
   * meaning of the words "red-green blindness").
   */
  @Test
  void theMatricesDoWhatTheyAreFor() {
    for (ColourVision eyes : ColourVision.values()) {
      assertThat(eyes.seen(Ink.WHITE)).as(eyes.name()).isEqualTo(Ink.WHITE);
      assertThat(eyes.seen(Ink.BLACK)).isEqualTo(Ink.BLACK);
      assertThat(eyes.contrast(Ink.WHITE, Ink.BLACK)).isCloseTo(21, within(1e-9));
    }
    Ink red = new Ink(200, 60, 0);
    Ink green = new Ink(100, 120, 0);
    int usual = apart(red, green);
    for (ColourVision eyes : List.of(ColourVision.WITHOUT_LONG, ColourVision.WITHOUT_MIDDLE)) {
      assertThat(apart(eyes.seen(red), eyes.seen(green))).as(eyes.name()).isLessThan(usual / 2);
    }
    Ink grey = ColourVision.GREY.seen(red);
    assertThat(grey.red()).isEqualTo(grey.green()).isEqualTo(grey.blue());
  }

  private static int apart(Ink one, Ink other) {
    return Math.abs(one.red() - other.red())
        + Math.abs(one.green() - other.green())
        + Math.abs(one.blue() - other.blue());
  }
}
