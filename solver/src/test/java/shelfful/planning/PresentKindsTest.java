package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Pose;
import shelfful.packing.Placed;

class PresentKindsTest {
  private final PresentKinds present = PresentKinds.of(new int[] {0, 2, 0, 1});

  @Test
  void absentKindsAreLeftOutOfTheQuestion() {
    assertThat(present.kinds()).containsExactly(1, 3);
    assertThat(present.counts()).containsExactly(2, 1);
    assertThat(present.placeOf()).containsExactly(-1, 0, -1, 1);
  }

  @Test
  void gapsAreThoseOfThePresentKinds() {
    double[][] all = {{0, 1, 2, 3}, {4, 5, 6, 7}, {8, 9, 10, 11}, {12, 13, 14, 15}};
    assertThat(present.of(all)).isDeepEqualTo(new double[][] {{5, 7}, {13, 15}});
  }

  @Test
  void bodiesComeBackUnderTheirOwnNumbers() {
    Placed third = new Placed(3, Pose.at(1, 2));
    Placed absent = new Placed(2, Pose.HERE);
    List<Placed> asked = present.ask(List.of(third, absent));
    assertThat(asked).containsExactly(new Placed(1, Pose.at(1, 2)));
    assertThat(present.answer(asked)).containsExactly(third);
  }

  @Test
  void nothingPresentIsAnEmptyQuestion() {
    assertThat(PresentKinds.of(new int[3]).kinds()).isEmpty();
  }
}
