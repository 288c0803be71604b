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
    assertThat(words(marks)).containsExactlyInAnyOrder("G", "S", "L");
    PlanView view = picture.layer(layer.id(), LayerPicture.Marked.NOTHING).plan().orElseThrow();
    Spot middle = view.at(layer.placements().get(1).at());
    assertThat(marks)
        .anyMatch(mark -> mark instanceof Mark.Circle disc && disc.centre().equals(middle));
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
