package shelfful.ui.week;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;

/**
 * The load of a firing, to be looked at on the desk.
 *
 * @param firingId the firing
 * @param load as it was inspected
 */
public record OpenedFiring(String firingId, InspectedLoad load) {

  /** Of the chosen firing; empty when nothing goes in. */
  static Optional<OpenedFiring> of(WeekViewModel model) {
    String id = model.chosen().get();
    Optional<OpenedFiring> found =
        model.week().flatMap(week -> week.load(id)).map(load -> new OpenedFiring(id, load));
    if (found.isEmpty() && model.week().isPresent()) {
      model.tellNothingIn();
    }
    return found;
  }
}
