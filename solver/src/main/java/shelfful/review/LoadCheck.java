package shelfful.review;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.week.PlannedFiring;

/** Whether each load breaks no rule of a setting. */
final class LoadCheck {
  private LoadCheck() {}

  /** The inspected load; empty when nothing goes in, or when it breaks rules, which are noted. */
  static Optional<InspectedLoad> judge(PlannedFiring firing, WeekFindings findings) {
    if (firing.load().isEmpty()) {
      return Optional.empty();
    }
    Inspection inspection = new Inspector().inspect(firing.load().get());
    if (inspection instanceof Inspection.Passed passed) {
      return Optional.of(passed.load());
    }
    ((Inspection.Failed) inspection)
        .findings()
        .forEach(
            finding ->
                findings.firing(
                    WeekRule.LOAD_BREAKS_RULES,
                    firing.id(),
                    "In the firing " + firing.id() + ": " + finding.sentence()));
    return Optional.empty();
  }
}
