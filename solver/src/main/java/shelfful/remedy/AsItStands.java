package shelfful.remedy;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;

/** Tries the free places of the load as it is: the planner may have missed one. */
final class AsItStands implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.AS_IT_STANDS;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return Reasons.isOfRoom(one);
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    return one.filledUp().map(load -> remedy(one, load));
  }

  static Remedy remedy(WaitingCase one, InspectedLoad load) {
    Telling telling = new Telling(one, load);
    String sentence = telling.goIn() + " on " + telling.where() + " as it stands; nothing moves.";
    return new Remedy(
        RemedyKind.AS_IT_STANDS,
        one.gained(load.load()),
        sentence,
        load,
        telling.change(),
        Optional.empty());
  }
}
