package shelfful.ui.firings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.measure.Cone;
import shelfful.record.FiringCourse;
import shelfful.record.WitnessCone;
import shelfful.ui.words.Words;

class CourseTextTest {
  private final Words words = Words.english();

  private static CourseText typed(String cone, String up, String start, String end) {
    return new CourseText("medium", Map.of("cone pack", cone), up, "", start, end);
  }

  @Test
  void readsHoursByTheClockAndWithEitherDecimalSign() {
    for (String up : List.of("9:30", "9.5", "9,5")) {
      FiringCourse course = typed("6", up, "", "").read(words).course().orElseThrow();
      assertThat(course.minutesUp()).as(up).contains(570);
    }
  }

  @Test
  void readsTheMeterInKilowattHoursAndTheConeOfEachPlace() {
    FiringCourse course = typed("06", "", "1204.5", "1256,75").read(words).course().orElseThrow();
    assertThat(course.meterStart()).contains(1_204_500L);
    assertThat(course.kilowattHours()).hasValue(52.25);
    assertThat(course.cones()).containsExactly(new WitnessCone("cone pack", new Cone("06")));
    assertThat(course.program()).contains("medium");
  }

  @Test
  void everyFieldMayStayEmpty() {
    CourseText empty = new CourseText("", Map.of("cone pack", ""), "", "", "", "");
    assertThat(empty.read(words).course()).contains(FiringCourse.UNKNOWN);
  }

  @Test
  void everythingWrongIsNamedWithItsField() {
    CourseText.Reading reading = typed("66", "half a day", "12", "11").read(words);
    assertThat(reading.course()).isEmpty();
    assertThat(reading.faults()).hasSize(3);
    assertThat(reading.faults().get(0)).contains("cone pack").contains("66");
    assertThat(reading.faults().get(1)).contains("half a day");
    assertThat(reading.faults().get(2)).contains("less than before");
  }

  @Test
  void whatWasNotedIsShownAsItWouldBeTyped() {
    FiringCourse course =
        new FiringCourse(
            Optional.of("slow"),
            List.of(new WitnessCone("cone pack", new Cone("6"))),
            Optional.of(545),
            Optional.of(960),
            Optional.of(1_204_000L),
            Optional.of(1_256_250L));
    CourseText text = CourseText.of(course, List.of("cone pack", "floor"));
    assertThat(text.up()).isEqualTo("9:05");
    assertThat(text.meterEnd()).isEqualTo("1256.25");
    assertThat(text.cones()).containsExactly(Map.entry("cone pack", "6"), Map.entry("floor", ""));
    assertThat(text.read(words).course()).contains(course);
  }
}
