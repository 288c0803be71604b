package shelfful.app;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.week.Hold;
import shelfful.week.Lateness;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Alters one firing of a finished week and leaves all else as it is, without planning. What comes
 * of it was inspected; what would break a rule does not come of it.
 */
public final class AlterAWeek {
  private AlterAWeek() {}

  /**
   * The same week with a firing held as much as said, and with it what {@link ChangeAWeek#hold}
   * holds and releases; empty when it would break a rule then.
   */
  public static Optional<InspectedWeek> hold(WeekPlan plan, String firingId, Hold hold) {
    return with(plan, ChangeAWeek.hold(plan, firingId, hold));
  }

  /**
   * The same week with a firing at another place of its own kiln, its time held; empty when the
   * rest of the week cannot stay as it is.
   */
  public static Optional<InspectedWeek> move(WeekPlan plan, FiringPlace place) {
    PlannedFiring firing = plan.firing(place.firingId()).orElseThrow();
    if (!place.isAllowed() || !place.kilnId().equals(firing.kilnId())) {
      return Optional.empty();
    }
    return with(plan, ChangeAWeek.holding(plan, moved(firing, place)));
  }

  /**
   * To plan the rest of the week around a firing at another place, held there. A frozen glaze
   * firing whose ware it would bisque too late is held no more: no week could keep both.
   */
  public static WeekRequest around(WeekPlan plan, FiringPlace place) {
    PlannedFiring firing = plan.firing(place.firingId()).orElseThrow();
    return ChangeAWeek.holding(plan, moved(firing, place));
  }

  /**
   * The firing goes there with all that is in it where that is ready by then; in another kiln its
   * load does not stand, so that only the time is held.
   */
  private static PlannedFiring moved(PlannedFiring firing, FiringPlace place) {
    boolean same = firing.kilnId().equals(place.kilnId());
    boolean whole =
        same
            && firing.load().isPresent()
            && place.hindrances().stream()
                .noneMatch(one -> one.kind() == FiringPlace.Kind.WARE_NOT_READY);
    return new PlannedFiring(
        firing.id(),
        place.kilnId(),
        place.programId(),
        place.times().orElseThrow(),
        same ? firing.portions() : List.of(),
        same ? firing.load() : Optional.empty(),
        whole ? Hold.ALL : Hold.TIME);
  }

  /** Every firing as it is held; those that are not held stand where they stood, and are free. */
  private static Optional<InspectedWeek> with(WeekPlan plan, WeekRequest asked) {
    Map<String, PlannedFiring> held = new HashMap<>();
    asked.held().forEach(firing -> held.put(firing.id(), firing));
    List<PlannedFiring> firings =
        plan.firings().stream()
            .map(firing -> held.getOrDefault(firing.id(), firing.held(Hold.FREE)))
            .sorted(
                Comparator.comparing((PlannedFiring firing) -> firing.times().loads())
                    .thenComparing(PlannedFiring::kilnId))
            .toList();
    WeekRequest request = plan.request().holding(asked.held());
    WeekPlan other = new WeekPlan(request, firings, plan.waiting(), Lateness.of(request, firings));
    return new WeekInspector().inspect(other) instanceof WeekInspection.Passed passed
        ? Optional.of(passed.week())
        : Optional.empty();
  }
}
