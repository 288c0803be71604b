package shelfful.ui.week;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/** The way from one firing to another by keys. */
final class DayByDay {
  private DayByDay() {}

  /** The first firing of the nearest day after (or before) that of a firing. */
  static Optional<String> from(Optional<WeekPlan> week, String firingId, int direction) {
    if (week.flatMap(plan -> plan.firing(firingId)).isEmpty()) {
      return Optional.empty();
    }
    LocalDate day = day(week.get().firing(firingId).get());
    List<PlannedFiring> others =
        week.get().firings().stream()
            .filter(other -> direction * day(other).compareTo(day) > 0)
            .toList();
    Optional<LocalDate> next =
        others.stream()
            .map(DayByDay::day)
            .min(direction > 0 ? Comparator.naturalOrder() : Comparator.reverseOrder());
    return others.stream()
        .filter(other -> next.filter(day(other)::equals).isPresent())
        .findFirst()
        .map(PlannedFiring::id);
  }

  private static LocalDate day(PlannedFiring firing) {
    return firing.times().loads().toLocalDate();
  }

  /** The firing of the next kiln (or the one before) that is loaded nearest in time. */
  static Optional<String> inOtherKiln(Optional<WeekPlan> week, String firingId, int direction) {
    Optional<PlannedFiring> from = week.flatMap(plan -> plan.firing(firingId));
    Optional<String> kiln =
        from.flatMap(firing -> kilnAfter(week.get(), firing.kilnId(), direction));
    return kiln.flatMap(
        id ->
            week.get().firings().stream()
                .filter(other -> other.kilnId().equals(id))
                .min(Comparator.comparing(other -> apart(other, from.get())))
                .map(PlannedFiring::id));
  }

  /** The kiln that stands so many rows lower. */
  static Optional<String> kilnAfter(WeekPlan plan, String kilnId, int rows) {
    List<String> kilns = plan.request().kilns().stream().map(KilnWork::kilnId).toList();
    int wanted = kilns.indexOf(kilnId) + rows;
    return wanted >= 0 && wanted < kilns.size() ? Optional.of(kilns.get(wanted)) : Optional.empty();
  }

  private static Duration apart(PlannedFiring one, PlannedFiring other) {
    return Duration.between(one.times().loads(), other.times().loads()).abs();
  }
}
