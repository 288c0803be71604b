package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleChoiceTest {
  @ParameterizedTest
  @CsvSource({
    "100, 100, 100, 100, 1 : 1",
    "500, 500, 180, 130, 1 : 4",
    "590, 100, 180, 130, 1 : 3.5",
    "5000, 100, 180, 130, 1 : 30"
  })
  void takesTheLargestPlainScaleThatFits(
      double width, double height, double widthThere, double heightThere, String told) {
    double ratio = ScaleChoice.toFit(width, height, widthThere, heightThere);
    assertThat(ScaleChoice.words(ratio)).isEqualTo(told);
    assertThat(width / ratio).isLessThanOrEqualTo(widthThere);
    assertThat(height / ratio).isLessThanOrEqualTo(heightThere);
  }
}
