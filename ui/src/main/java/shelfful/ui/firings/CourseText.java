package shelfful.ui.firings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shelfful.app.FiringFolder;
import shelfful.measure.Cone;
import shelfful.record.FiringCourse;
import shelfful.record.WitnessCone;
import shelfful.ui.look.Decimals;
import shelfful.ui.words.Words;

/**
 * How a firing went, as it is typed: every field may be left blank.
 *
 * @param program of the controller
 * @param cones by place; blank where nobody looked
 * @param up hours until the end of the last hold: {@code 9:30} or {@code 9.5}
 * @param down hours from there to opening, likewise
 * @param meterStart reading before, in kilowatt-hours
 * @param meterEnd reading after, in kilowatt-hours
 */
public record CourseText(
    String program,
    Map<String, String> cones,
    String up,
    String down,
    String meterStart,
    String meterEnd) {
  private static final Pattern CLOCK = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");
  private static final double MINUTES = 60;
  private static final double WATT_HOURS = 1000;

  /** Takes its own copy, in order. */
  public CourseText {
    cones = new LinkedHashMap<>(cones);
  }

  /**
   * What is noted of a firing already.
   *
   * @param places the witness cones' places, besides those that were noted
   */
  public static CourseText of(FiringCourse course, List<String> places) {
    Map<String, String> cones = new LinkedHashMap<>();
    places.forEach(place -> cones.put(place, ""));
    course.cones().forEach(cone -> cones.put(cone.place(), cone.reached().number()));
    return new CourseText(
        course.program().orElse(""),
        cones,
        course.minutesUp().map(CourseText::clock).orElse(""),
        course.minutesDown().map(CourseText::clock).orElse(""),
        course.meterStart().map(CourseText::kilowattHours).orElse(""),
        course.meterEnd().map(CourseText::kilowattHours).orElse(""));
  }

  private static String clock(int minutes) {
    int rest = minutes % 60;
    return minutes / 60 + (rest < 10 ? ":0" : ":") + rest;
  }

  private static String kilowattHours(long wattHours) {
    return BigDecimal.valueOf(wattHours, 3).stripTrailingZeros().toPlainString();
  }

  /**
   * What was read.
   *
   * @param course empty while something cannot be read
   * @param faults a sentence for each field that cannot
   */
  public record Reading(Optional<FiringCourse> course, List<String> faults) {
    /** Takes its own copy. */
    public Reading {
      faults = List.copyOf(faults);
    }
  }

  /** Reads every field; what is wrong is named with its field. */
  public Reading read(Words words) {
    List<String> faults = new ArrayList<>();
    List<WitnessCone> reached = new ArrayList<>();
    cones.forEach(
        (place, typed) -> {
          Optional<Cone> cone = Cone.find(typed.strip());
          cone.ifPresent(some -> reached.add(new WitnessCone(place, some)));
          if (cone.isEmpty() && !typed.isBlank()) {
            faults.add(words.of("course.noCone", place, typed.strip()));
          }
        });
    if (!program.isBlank() && !FiringFolder.isSound(program)) {
      faults.add(words.of("course.badProgram", FiringFolder.longest()));
    }
    Optional<Integer> minutesUp = minutes(up, "course.up", words, faults);
    Optional<Integer> minutesDown = minutes(down, "course.down", words, faults);
    Optional<Long> start = meter(meterStart, "course.meterStart", words, faults);
    Optional<Long> end = meter(meterEnd, "course.meterEnd", words, faults);
    if (start.isPresent() && end.isPresent() && end.get() < start.get()) {
      faults.add(words.of("course.backwards"));
    }
    return faults.isEmpty()
        ? new Reading(
            Optional.of(
                new FiringCourse(
                    Optional.of(program.strip()).filter(text -> !text.isEmpty()),
                    reached,
                    minutesUp,
                    minutesDown,
                    start,
                    end)),
            faults)
        : new Reading(Optional.empty(), faults);
  }

  private static Optional<Integer> minutes(
      String typed, String key, Words words, List<String> faults) {
    Matcher clock = CLOCK.matcher(typed.strip());
    if (clock.matches()) {
      return Optional.of(60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2)));
    }
    OptionalDouble hours = Decimals.read(typed);
    if (hours.isPresent() && hours.getAsDouble() < 1000) {
      return Optional.of((int) Math.round(MINUTES * hours.getAsDouble()));
    }
    if (!typed.isBlank()) {
      faults.add(words.of("course.noTime", words.of(key), typed.strip()));
    }
    return Optional.empty();
  }

  private static Optional<Long> meter(String typed, String key, Words words, List<String> faults) {
    OptionalDouble read = Decimals.read(typed);
    if (read.isEmpty() && !typed.isBlank()) {
      faults.add(words.of("course.noMeter", words.of(key), typed.strip()));
    }
    return read.isPresent()
        ? Optional.of(Math.round(WATT_HOURS * read.getAsDouble()))
        : Optional.empty();
  }
}
