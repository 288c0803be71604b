package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.measure.LengthUnit;
import shelfful.record.Grade;

class GradeMarksTest {
  private static final Map<Grade, String> LETTERS =
      new EnumMap<>(Map.of(Grade.GOOD, "G", Grade.SECOND, "S", Grade.LOST, "L"));

  private final InspectedLoad load = Loads.sixty();
  private final Layer layer = load.load().layers().get(0);
  private final LayerPicture picture = LayerPicture.of(load, LengthUnit.MILLIMETRES);

  private String piece(int index) {
    return layer.placements().get(index).pieceId();
  }

  private List<Mark> marks(Map<String, Grade> grades) {
    return picture.graded(layer.id(), grades, LETTERS);
  }

  private static List<String> words(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).words())
        .toList();
  }

  private static Set<Long> directions(List<Mark> marks) {
    Set<Long> directions = new HashSet<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Hatching hatching) {
        hatching
            .strokes()
            .forEach(
                stroke ->
                    directions.add(
                        Math.round(
                            Math.toDegrees(
                                Math.atan2(
                                    stroke.from().y() - stroke.to().y(),
                                    stroke.to().x() - stroke.from().x())))));
      }
    }
    return directions;
  }

  @Test
  void everyGradeHasItsLetterOnItsPieceBesideItsNumber() {
    List<Mark> marks =
        marks(Map.of(piece(0), Grade.GOOD, piece(1), Grade.SECOND, piece(2), Grade.LOST));
    assertThat(words(marks)).contains("G", "S", "L");
    PlanView view = picture.layer(layer.id(), LayerPicture.Marked.NOTHING).plan().orElseThrow();
    for (int i = 0; i < 3; i++) {
      Spot middle = view.at(layer.placements().get(i).at());
      assertThat(discs(marks)).anyMatch(disc -> distance(disc, middle) < view.onPaper(60));
      int number = picture.numberOf(layer.id(), piece(i));
      assertThat(words(marks)).anyMatch(words -> words.contains(Integer.toString(number)));
    }
  }

  private static List<Spot> discs(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Circle.class::isInstance)
        .map(mark -> ((Mark.Circle) mark).centre())
        .toList();
  }

  private static double distance(Spot one, Spot other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }

  @Test
  void gradesAreToldApartByTheDirectionOfTheirStrokesAlone() {
    assertThat(directions(marks(Map.of(piece(0), Grade.GOOD)))).isEmpty();
    assertThat(directions(marks(Map.of(piece(0), Grade.SECOND)))).hasSize(1);
    assertThat(directions(marks(Map.of(piece(0), Grade.LOST)))).hasSize(2);
  }

  @Test
  void whatNobodyHasLookedAtAndWhatStandsElsewhereHasNoMark() {
    assertThat(marks(Map.of())).isEmpty();
    assertThat(marks(Map.of("elsewhere-001", Grade.LOST))).isEmpty();
  }
}
