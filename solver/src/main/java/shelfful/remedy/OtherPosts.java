package shelfful.remedy;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;

/**
 * Holds every piece where it stands on its layer and plans the rest: the posts under the layers,
 * shelves that are not used yet, and whatever waits.
 */
final class OtherPosts implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.OTHER_POSTS;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return Reasons.isOfRoom(one);
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    return one.plan()
        .heldStill()
        .filter(load -> !AsItStands.leavesFurniture(one, load))
        .map(load -> remedy(one, load));
  }

  private static Remedy remedy(WaitingCase one, InspectedLoad load) {
    Telling telling = new Telling(one, load);
    String sentence =
        telling.goIn()
            + " on "
            + telling.where()
            + " when "
            + telling.furniture()
            + "; "
            + telling.moved()
            + " on its shelf.";
    return new Remedy(
        RemedyKind.OTHER_POSTS,
        one.gained(load.load()),
        sentence,
        load,
        telling.change(),
        Optional.empty());
  }
}
