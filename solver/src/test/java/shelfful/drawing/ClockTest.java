package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.measure.Angle;

class ClockTest {
  @ParameterizedTest
  @CsvSource({
    "0, 1, 12:00",
    "1, 0, 3:00",
    "0, -1, 6:00",
    "-1, 0, 9:00",
    "1, 1, 1:30",
    "-1, 1, 10:30",
    "-0.0001, 1, 12:00",
    "0.017453, 1, 12:02"
  })
  void readsLikeAClockWithTheFarSideAtTwelve(double right, double away, String hour) {
    assertThat(Clock.towards(right, away)).isEqualTo(hour);
  }

  @Test
  void readsAnglesThatTurnTheOtherWay() {
    assertThat(Clock.of(Angle.ofDegrees(30))).isEqualTo("2:00");
    assertThat(Clock.of(Angle.ofDegrees(270))).isEqualTo("6:00");
  }
}
