package shelfful.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.week.WeekPlan;

/**
 * A week that breaks no rule. Only the {@link WeekInspector} can make one, and only this can be
 * shown, saved or printed.
 */
public final class InspectedWeek {
  private final WeekPlan plan;
  private final Map<String, InspectedLoad> loads;
  private final List<WeekFinding> wishes;

  InspectedWeek(WeekPlan plan, Map<String, InspectedLoad> loads, List<WeekFinding> wishes) {
    this.plan = plan;
    this.loads = Map.copyOf(loads);
    this.wishes = List.copyOf(wishes);
  }

  /** What was judged. */
  public WeekPlan plan() {
    return plan;
  }

  /** The load of a firing; empty when nothing goes in. */
  public Optional<InspectedLoad> load(String firingId) {
    return Optional.ofNullable(loads.get(firingId));
  }

  /** Wishes that are not met; none of them forbids the week. */
  public List<WeekFinding> wishes() {
    return wishes;
  }
}
