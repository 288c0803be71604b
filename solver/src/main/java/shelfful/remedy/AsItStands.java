package shelfful.remedy;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;

/** Looks for places in the load as it is, beside everything that stands in it. */
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
    Optional<InspectedLoad> held = one.plan().heldStill();
    return held.flatMap(load -> transplanted(one, load))
        .or(() -> held.filter(load -> leavesFurniture(one, load)))
        .map(load -> remedy(one, load));
  }

  /**
   * The load as it is with the group, and what only goes with it, at the places found for them in
   * another; empty when none of the group gets in or the judge refuses it on the posts that stand.
   */
  private static Optional<InspectedLoad> transplanted(WaitingCase one, InspectedLoad found) {
    Set<String> waiting =
        one.load().leftOut().stream().map(LeftOut::pieceId).collect(Collectors.toSet());
    waiting.retainAll(one.mates());
    WorkPlan plan = WorkPlan.of(one.load());
    for (Layer from : found.load().layers()) {
      for (Placement place : from.placements()) {
        Optional<Edit> in = putIn(one, LayerPlace.of(from), place);
        if (waiting.contains(place.pieceId()) && in.isPresent()) {
          plan = in.get().on(plan);
        }
      }
    }
    Load filled = plan.load();
    return one.gained(filled) > 0 ? Replanning.judged(filled) : Optional.empty();
  }

  private static Optional<Edit> putIn(WaitingCase one, LayerPlace at, Placement place) {
    return one.load().layers().stream()
        .filter(layer -> LayerPlace.of(layer).equals(at))
        .map(layer -> (Edit) new Edit.PutIn(layer.id(), place))
        .findFirst();
  }

  static boolean leavesFurniture(WaitingCase one, InspectedLoad load) {
    return Change.between(one.load(), load.load()).leavesFurniture();
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
