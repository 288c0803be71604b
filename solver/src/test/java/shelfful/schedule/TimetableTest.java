package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomDice;
import shelfful.fixture.RandomWeek;
import shelfful.fixture.Weeks;
import shelfful.week.FiringTimes;
import shelfful.week.KilnWork;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.WeekRequest;

/** The timetable against stepping through the week minute by minute. */
class TimetableTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void noMinuteBeforeWouldHaveDone(long seed) {
    WeekRequest request = RandomWeek.of(seed);
    KilnWork kiln = request.kilns().get(0);
    RandomDice dice = new RandomDice(seed);
    for (Program program : kiln.programs()) {
      for (int i = 0; i < 4; i++) {
        LocalDateTime notBefore = request.start().plusMinutes(dice.whole(0, 4000));

        Optional<FiringTimes> found = FiringClock.next(request, kiln, program, notBefore);

        assertThat(found.map(FiringTimes::loads))
            .as(program.id() + " from " + notBefore)
            .isEqualTo(byTheMinute(request, kiln, program, notBefore));
      }
    }
  }

  private static Optional<LocalDateTime> byTheMinute(
      WeekRequest request, KilnWork kiln, Program program, LocalDateTime notBefore) {
    for (LocalDateTime at = notBefore; at.isBefore(request.end()); at = at.plusMinutes(1)) {
      if (kiln.calendar().isTended(new Span(at, at.plus(program.loading())))) {
        Optional<LocalDateTime> unpacks = unpacks(request, kiln, program, at);
        if (unpacks.isPresent()) {
          Span busy = new Span(at, unpacks.get().plus(program.unpacking()));
          if (kiln.calendar().outOfOrder().stream().noneMatch(busy::overlaps)) {
            return Optional.of(at);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDateTime> unpacks(
      WeekRequest request, KilnWork kiln, Program program, LocalDateTime loads) {
    LocalDateTime at = loads.plus(program.loading()).plus(program.burning());
    for (; !at.plus(program.unpacking()).isAfter(request.end()); at = at.plusMinutes(1)) {
      if (kiln.calendar().isTended(new Span(at, at.plus(program.unpacking())))) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  @ParameterizedTest(name = "{0} days")
  @ValueSource(ints = {1, 2})
  void aWeekTooShortForAFiringHasNone(int days) {
    WeekRequest week = Weeks.week(days, List.of(Weeks.kiln("K1", Weeks.weekdays())), List.of());

    assertThat(FiringClock.next(week, week.kilns().get(0), Weeks.bisque(), week.start())).isEmpty();
  }
}
