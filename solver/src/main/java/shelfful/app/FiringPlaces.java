package shelfful.app;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.app.FiringPlace.Hindrance;
import shelfful.app.FiringPlace.Kind;
import shelfful.schedule.FiringClock;
import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.KilnWork;
import shelfful.week.OpenHours;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.WeekPlan;

/**
 * The places a firing of a week can be moved to: in working hours, to the quarter of an hour, with
 * what stands in the way. Quick enough to be asked while a firing is dragged.
 */
public final class FiringPlaces {
  private static final int QUARTER = 15;

  /** A longer stretch of days off is not stepped over. */
  private static final int MOST_DAYS_OFF = 21;

  private final WeekPlan plan;
  private final PlannedFiring firing;
  private final Program program;
  private final WareTimes ware;

  /** Places for one firing of a week. */
  public FiringPlaces(WeekPlan plan, String firingId) {
    this.plan = plan;
    this.firing = plan.firing(firingId).orElseThrow();
    this.program = plan.request().program(firing).orElseThrow();
    this.ware = new WareTimes(plan, firing);
  }

  /** The place in a kiln of the week that is nearest to a wished time of loading. */
  public FiringPlace near(String kilnId, LocalDateTime wished) {
    KilnWork kiln = plan.request().kiln(kilnId).orElseThrow();
    Optional<Program> alike = alike(kiln);
    List<Hindrance> hindrances = new ArrayList<>();
    if (alike.isEmpty()) {
      hindrances.add(new Hindrance(Kind.NO_PROGRAM, kilnId, 0, wished, wished));
      return place(kilnId, "", Optional.empty(), hindrances);
    }
    LocalDateTime loads = inHours(kiln, alike.get(), wished).orElse(wished);
    Optional<FiringTimes> times = FiringClock.loadedAt(plan.request(), kiln, alike.get(), loads);
    if (loads.isBefore(plan.request().start())) {
      LocalDateTime start = plan.request().start();
      hindrances.add(new Hindrance(Kind.BEFORE_THE_WEEK, kilnId, 0, loads, start));
    }
    if (times.isEmpty()) {
      LocalDateTime end = plan.request().end();
      hindrances.add(new Hindrance(Kind.AFTER_THE_WEEK, kilnId, 0, loads, end));
    } else {
      inTheKiln(kiln, times.get(), hindrances);
      hindrances.addAll(ware.hindrances(times.get()));
    }
    if (!loads.toLocalDate().equals(wished.toLocalDate())) {
      hindrances.add(new Hindrance(Kind.MOVED_INTO_HOURS, kilnId, 0, wished, loads));
    }
    return place(kilnId, alike.get().id(), times, hindrances);
  }

  /**
   * The place on the next working day of a kiln after (or before) a time of loading; empty when the
   * week has none left.
   *
   * @param direction 1 for after, −1 for before
   */
  public Optional<FiringPlace> daysAway(String kilnId, LocalDateTime loads, int direction) {
    for (int days = 1; days <= MOST_DAYS_OFF; days++) {
      LocalDateTime wished = loads.plusDays((long) direction * days);
      FiringPlace place = near(kilnId, wished);
      boolean onTheDay =
          place.times().map(FiringTimes::loads).map(LocalDateTime::toLocalDate).stream()
              .anyMatch(wished.toLocalDate()::equals);
      if (onTheDay) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  private FiringPlace place(
      String kilnId, String programId, Optional<FiringTimes> times, List<Hindrance> hindrances) {
    hindrances.sort(Comparator.comparing(one -> !one.kind().forbids()));
    return new FiringPlace(firing.id(), kilnId, programId, times, hindrances);
  }

  /** The same program in its own kiln, else one that fires the same. */
  private Optional<Program> alike(KilnWork kiln) {
    if (kiln.kilnId().equals(firing.kilnId())) {
      return Optional.of(program);
    }
    return kiln.programs().stream()
        .filter(
            other ->
                other.kind() == program.kind()
                    && other.cone().equals(program.cone())
                    && other.atmosphere() == program.atmosphere())
        .findFirst();
  }

  /** The time nearest to a wished one at which somebody is there to load. */
  private Optional<LocalDateTime> inHours(KilnWork kiln, Program with, LocalDateTime wished) {
    LocalDateTime quarter = quarter(wished);
    List<LocalDateTime> times = new ArrayList<>();
    LocalDate day = plan.request().start().toLocalDate();
    for (; !day.isAfter(plan.request().lastDay()); day = day.plusDays(1)) {
      Optional<OpenHours> hours = kiln.calendar().open(day);
      if (hours.isEmpty()) {
        continue;
      }
      LocalDateTime first = day.atTime(hours.get().from());
      LocalDateTime last = day.atTime(hours.get().to()).minus(with.loading());
      if (!last.isBefore(first)) {
        times.add(quarter.isBefore(first) ? first : quarter.isAfter(last) ? last : quarter);
      }
    }
    return times.stream()
        .min(Comparator.comparingLong(at -> Math.abs(at.until(wished, ChronoUnit.MINUTES))));
  }

  private static LocalDateTime quarter(LocalDateTime time) {
    LocalDateTime hour = time.truncatedTo(ChronoUnit.HOURS);
    return hour.plusMinutes(Math.round(time.getMinute() / (double) QUARTER) * QUARTER);
  }

  private void inTheKiln(KilnWork kiln, FiringTimes times, List<Hindrance> hindrances) {
    for (Span span : kiln.calendar().outOfOrder()) {
      if (span.overlaps(times.busy())) {
        hindrances.add(new Hindrance(Kind.OUT_OF_ORDER, kiln.kilnId(), 0, span.from(), span.to()));
      }
    }
    for (PlannedFiring other : plan.firings()) {
      boolean inTheWay =
          !other.id().equals(firing.id())
              && other.kilnId().equals(kiln.kilnId())
              && other.times().busy().overlaps(times.busy());
      if (inTheWay) {
        Kind kind = other.hold() == Hold.FREE ? Kind.FIRING_IN_THE_WAY : Kind.HELD_IN_THE_WAY;
        Span busy = other.times().busy();
        hindrances.add(new Hindrance(kind, other.id(), other.pieces(), busy.from(), busy.to()));
      }
    }
  }
}
