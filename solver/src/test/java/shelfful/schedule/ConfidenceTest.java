package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConfidenceTest {
  private final Confidence confidence = new Confidence();

  @Test
  void beginsWithWhatWasAskedFor() {
    assertThat(confidence.first(108)).isEqualTo(108);
  }

  @Test
  void beginsALittleBelowWhatWasEnoughBefore() {
    confidence.sufficed(118);
    assertThat(confidence.first(100)).isBetween(110, 117);
    assertThat(confidence.first(130)).isEqualTo(130);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 6, 20})
  void growsStepByStepAndEnds(int firings) {
    int stretch = 100;
    int steps = 0;
    int more = confidence.more(stretch, firings);
    while (more > stretch) {
      stretch = more;
      more = confidence.more(stretch, firings);
      steps++;
    }
    assertThat(more).isEqualTo(stretch);
    assertThat(steps).isBetween(1, 10);
    assertThat(confidence.more(stretch, firings + 1)).isGreaterThan(stretch);
  }
}
