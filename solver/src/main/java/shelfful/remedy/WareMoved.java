package shelfful.remedy;

import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;

/**
 * Lets one layer go after another, then all of them, so that its pieces may move on their shelf or
 * change places with others; nothing that is in may fall out.
 */
final class WareMoved implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.WARE_MOVED;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return Reasons.isOfRoom(one) && !one.load().layers().isEmpty();
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    for (Set<String> freed : new FreedLayers(one).inTurn()) {
      Optional<Remedy> found =
          taken(one, one.plan().around(one.request(), id -> !freed.contains(id)));
      if (found.isPresent()) {
        return found;
      }
    }
    return taken(one, one.plan().anew(one.request()));
  }

  private static Optional<Remedy> taken(WaitingCase one, Optional<InspectedLoad> load) {
    if (load.isEmpty()) {
      return Optional.empty();
    }
    Telling telling = new Telling(one, load.get());
    if (!telling.change().losesNothing()) {
      one.byTheWay().add(load.get());
      return Optional.empty();
    }
    String furniture = telling.furniture();
    String sentence =
        telling.goIn()
            + " on "
            + telling.where()
            + "; "
            + telling.moved()
            + " and all of them stay in"
            + (furniture.isEmpty() ? "." : "; " + furniture + ".");
    return Optional.of(
        new Remedy(
            RemedyKind.WARE_MOVED,
            one.gained(load.get().load()),
            sentence,
            load.get(),
            telling.change(),
            Optional.empty()));
  }
}
