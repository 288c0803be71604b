package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.load.RequestChange;
import shelfful.ware.BatchChange;

/** Takes the mark off everything else that must go, and lets one layer go after another. */
final class MustGoDropped implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.MUST_GO_DROPPED;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    Set<String> standing = one.standing();
    return Reasons.isOfRoom(one)
        && one.request().pieces().stream()
            .filter(piece -> standing.contains(piece.id()))
            .anyMatch(piece -> isOthers(one, piece.batch().id()));
  }

  private static boolean isOthers(WaitingCase one, String batchId) {
    return OthersWait.mustGo(one, batchId) && !one.first().contains(batchId);
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    LoadRequest dropped =
        RequestChange.batches(
            one.request(),
            batch -> one.first().contains(batch.id()) ? batch : BatchChange.mustGo(batch, false));
    List<InspectedLoad> loads = new ArrayList<>(one.byTheWay());
    for (Set<String> freed : new FreedLayers(one).inTurn()) {
      one.plan().around(dropped, id -> !freed.contains(id)).ifPresent(loads::add);
    }
    return GivenUp.least(one, loads.stream(), id -> true)
        .filter(load -> dropsOne(one, load))
        .map(load -> GivenUp.remedy(one, RemedyKind.MUST_GO_DROPPED, load));
  }

  private static boolean dropsOne(WaitingCase one, InspectedLoad load) {
    return Change.between(one.load(), load.load()).waiting().keySet().stream()
        .anyMatch(id -> isOthers(one, id));
  }
}
