package shelfful.remedy;

import java.util.Optional;
import shelfful.ware.Batch;

/**
 * Lets pieces that need not go wait instead. Moving ware was tried for every such case before, and
 * the loads it led to that lose something are all that this looks at: letting the same layers go
 * again would lead to the same loads.
 */
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
