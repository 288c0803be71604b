package shelfful.remedy;

import java.util.Optional;
import java.util.Set;
import shelfful.ware.Batch;

/** Lets pieces that need not go wait instead; looks first at what moving ware led to. */
final class OthersWait implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.OTHERS_WAIT;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return Reasons.isOfRoom(one) && !one.load().layers().isEmpty();
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    if (one.byTheWay().isEmpty()) {
      for (Set<String> freed : new FreedLayers(one).inTurn()) {
        one.plan().around(one.request(), id -> !freed.contains(id)).ifPresent(one.byTheWay()::add);
        if (!one.byTheWay().isEmpty()) {
          break;
        }
      }
    }
    return GivenUp.least(one, one.byTheWay().stream(), id -> !mustGo(one, id))
        .map(load -> GivenUp.remedy(one, RemedyKind.OTHERS_WAIT, load));
  }

  /** Whether a batch was marked to go. */
  static boolean mustGo(WaitingCase one, String batchId) {
    return one.request().batches().stream()
        .filter(batch -> batch.id().equals(batchId))
        .anyMatch(Batch::mustGo);
  }
}
