package shelfful.app;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import shelfful.schedule.FiringClock;
import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Changes what is asked of a week: what to plan next when a firing is frozen, released or added, a
 * kiln breaks down or an order comes in. Values in, values out; nothing is planned here.
 */
public final class ChangeAWeek {
  private ChangeAWeek() {}

  /** To plan a week again and change as little as possible; what is held stays held. */
  public static WeekRequest again(WeekPlan plan) {
    return plan.request().holding(PlannedFiring.held(plan.firings())).after(plan.firings());
  }

  /**
   * The same with a firing frozen whole, and with it the bisque firings that its ware comes from;
   * one that nothing goes into keeps its time only.
   */
  public static WeekRequest freeze(WeekPlan plan, String firingId) {
    return freeze(plan, List.of(firingId));
  }

  /** The same with several firings frozen. */
  public static WeekRequest freeze(WeekPlan plan, Collection<String> firingIds) {
    WeekRequest request = again(plan);
    for (String id : firingIds) {
      request = holding(request, plan, require(plan, id).held(Hold.ALL));
    }
    return request;
  }

  /** The same with a firing held no more, nor frozen ones whose ware comes from it. */
  public static WeekRequest release(WeekPlan plan, String firingId) {
    WeekRequest again = again(plan);
    List<PlannedFiring> others = without(again.held(), firingId);
    return again.holding(HeldTogether.withTheirSources(again, others));
  }

  /**
   * The same with a firing held as much as said, by the rules of {@link #freeze} and {@link
   * #release}.
   */
  public static WeekRequest hold(WeekPlan plan, String firingId, Hold hold) {
    PlannedFiring firing = require(plan, firingId);
    return hold == Hold.FREE ? release(plan, firingId) : holding(plan, firing.held(hold));
  }

  /**
   * The same with a firing of the plan held as it is given here, wherever that is; one that is held
   * whole holds its sources, and frozen ones whose ware it would bring too late are held no more.
   */
  static WeekRequest holding(WeekPlan plan, PlannedFiring firing) {
    return holding(again(plan), plan, firing);
  }

  private static WeekRequest holding(WeekRequest request, WeekPlan plan, PlannedFiring firing) {
    WeekRequest all = request;
    if (firing.hold() == Hold.ALL) {
      for (PlannedFiring before : HeldTogether.sources(plan, firing)) {
        all = hold(all, before.held(Hold.ALL));
      }
    }
    boolean empty = firing.load().isEmpty();
    all = hold(all, empty ? firing.held(Hold.TIME) : firing);
    return all.holding(HeldTogether.withTheirSources(all, all.held()));
  }

  /** One more firing at a time somebody chose, in working hours or not. */
  public static WeekChange addFiring(
      WeekRequest request, String kilnId, String programId, LocalDateTime loads) {
    Optional<KilnWork> kiln = request.kiln(kilnId);
    Optional<Program> program = kiln.flatMap(work -> work.program(programId));
    if (program.isEmpty()) {
      return new WeekChange.Refused(
          "There is no program "
              + programId
              + " in a kiln "
              + kilnId
              + ". Name a kiln of the week and one of its programs.");
    }
    Optional<FiringTimes> times = FiringClock.loadedAt(request, kiln.get(), program.get(), loads);
    if (times.isEmpty()) {
      return cannotBeUnpacked();
    }
    return hold(
        request,
        new PlannedFiring(
            newId(request), kilnId, programId, times.get(), List.of(), Optional.empty(), Hold.TIME),
        kiln.get());
  }

  /** With a kiln out of order; what was held in it then is held no more, nor what needs it. */
  public static WeekChange outOfOrder(WeekRequest request, String kilnId, Span span) {
    if (request.kiln(kilnId).isEmpty()) {
      return new WeekChange.Refused(
          "There is no kiln " + kilnId + " in the week. Name one of its kilns.");
    }
    List<KilnWork> kilns =
        request.kilns().stream()
            .map(
                work ->
                    work.kilnId().equals(kilnId) ? work.with(work.calendar().without(span)) : work)
            .toList();
    List<PlannedFiring> held =
        request.held().stream()
            .filter(
                firing -> !firing.kilnId().equals(kilnId) || !firing.times().busy().overlaps(span))
            .toList();
    return new WeekChange.Possible(
        request.firedIn(kilns).holding(HeldTogether.withTheirSources(request, held)));
  }

  /** With more ware. Refused when one of its ids is there already. */
  public static WeekChange order(WeekRequest request, List<WareLine> more) {
    List<WareLine> lines = new ArrayList<>(request.lines());
    lines.addAll(more);
    TreeSet<String> ids = new TreeSet<>();
    for (WareLine line : lines) {
      if (!ids.add(line.batch().id())) {
        return new WeekChange.Refused(
            "There are two batches " + line.batch().id() + ". Give each an id of its own.");
      }
    }
    return new WeekChange.Possible(request.of(lines));
  }

  private static WeekChange hold(WeekRequest request, PlannedFiring firing, KilnWork kiln) {
    Span busy = firing.times().busy();
    if (firing.times().loads().isBefore(request.start())) {
      return new WeekChange.Refused(
          "The week begins at " + request.start() + ". Choose a time after that.");
    }
    for (Span span : kiln.calendar().outOfOrder()) {
      if (span.overlaps(busy)) {
        return new WeekChange.Refused(
            "The kiln "
                + kiln.kilnId()
                + " is out of order from "
                + span.from()
                + " to "
                + span.to()
                + ". Choose another time.");
      }
    }
    for (PlannedFiring other : without(request.held(), firing.id())) {
      if (other.kilnId().equals(firing.kilnId()) && other.times().busy().overlaps(busy)) {
        return new WeekChange.Refused(
            "The held firing "
                + other.id()
                + " is in the kiln from "
                + other.times().loads()
                + " to "
                + other.times().unpacked()
                + ". Choose another time or release it.");
      }
    }
    WeekRequest held = hold(request, firing);
    return new WeekChange.Possible(held.holding(HeldTogether.withTheirSources(held, held.held())));
  }

  private static WeekRequest hold(WeekRequest request, PlannedFiring firing) {
    List<PlannedFiring> held = new ArrayList<>(without(request.held(), firing.id()));
    held.add(firing);
    return request.holding(held);
  }

  private static List<PlannedFiring> without(List<PlannedFiring> held, String id) {
    return held.stream().filter(firing -> !firing.id().equals(id)).toList();
  }

  private static String newId(WeekRequest request) {
    TreeSet<String> taken = new TreeSet<>();
    request.held().forEach(firing -> taken.add(firing.id()));
    request.earlier().forEach(firing -> taken.add(firing.id()));
    int number = 1;
    while (taken.contains("X" + number)) {
      number++;
    }
    return "X" + number;
  }

  private static WeekChange cannotBeUnpacked() {
    return new WeekChange.Refused(
        "It could not be unpacked within the week. Choose an earlier time or a later last day.");
  }

  private static PlannedFiring require(WeekPlan plan, String firingId) {
    return plan.firing(firingId)
        .orElseThrow(() -> new IllegalArgumentException("The week has no firing " + firingId));
  }
}
