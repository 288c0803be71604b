package shelfful.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** A request with one thing different; everything else stays as it was asked. */
public final class RequestChange {
  private RequestChange() {}

  /** The same asked of another studio, for instance one with a shelf more. */
  public static LoadRequest studio(LoadRequest request, Studio studio) {
    return new LoadRequest(
        studio,
        request.batches(),
        request.firing(),
        request.columnPlanId(),
        request.day(),
        request.seed(),
        request.steps(),
        request.kept());
  }

  /** The same with every batch as the change makes it. */
  public static LoadRequest batches(LoadRequest request, UnaryOperator<Batch> change) {
    return new LoadRequest(
        request.studio(),
        request.batches().stream().map(change).toList(),
        request.firing(),
        request.columnPlanId(),
        request.day(),
        request.seed(),
        request.steps(),
        request.kept());
  }

  /**
   * The same for another column plan; what was kept belonged to the old one and is kept no more.
   */
  public static LoadRequest columnPlan(LoadRequest request, String columnPlanId) {
    return new LoadRequest(
        request.studio(),
        request.batches(),
        request.firing(),
        Optional.of(columnPlanId),
        request.day(),
        request.seed(),
        request.steps());
  }

  /** The same with another seed of the search. */
  public static LoadRequest seed(LoadRequest request, long seed) {
    return new LoadRequest(
        request.studio(),
        request.batches(),
        request.firing(),
        request.columnPlanId(),
        request.day(),
        seed,
        request.steps(),
        request.kept());
  }

  /** A firing of its own for another list in the same studio; nothing is kept. */
  public static LoadRequest firing(LoadRequest request, Firing firing, List<Batch> batches) {
    return new LoadRequest(
        request.studio(),
        new ArrayList<>(batches),
        firing,
        Optional.empty(),
        request.day(),
        request.seed(),
        request.steps());
  }
}
