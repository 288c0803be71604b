package shelfful.week;

import java.util.List;
import java.util.Optional;

/**
 * The finished answer for a run of firings. Nothing here promises that it obeys the rules; only an
 * inspection of the week does.
 *
 * @param request what was asked, so that a week can be judged by itself
 * @param firings in the order they are loaded; at one time by the kiln's id
 * @param waiting pieces that miss a firing they need
 * @param late pieces that are finished after the day they are due, in the order of the list
 */
public record WeekPlan(
    WeekRequest request, List<PlannedFiring> firings, List<Waiting> waiting, List<Late> late) {
  /** Takes its own copies. */
  public WeekPlan {
    firings = List.copyOf(firings);
    waiting = List.copyOf(waiting);
    late = List.copyOf(late);
  }

  /** The firing of this id. */
  public Optional<PlannedFiring> firing(String id) {
    return firings.stream().filter(firing -> firing.id().equals(id)).findFirst();
  }
}
