package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/** Where loads come from: the load planner with the judge behind it, from outside. */
@FunctionalInterface
public interface LoadSource {

  /**
   * Plans a load; empty when the judge refused every one. Repeatable by the request's steps. Asked
   * from two threads at once while weeks are planned until a time.
   */
  Optional<InspectedLoad> plan(LoadRequest request);

  /**
   * The same, beginning from a load of much the same ware.
   *
   * @param like pieces that are not in the request are left aside
   */
  default Optional<InspectedLoad> plan(LoadRequest request, Load like) {
    return plan(request);
  }

  /**
   * Several loads bettered together, so that they hold more of the ware they share; empty where
   * nothing better was found. Which pieces of a batch are in which load means nothing any more, but
   * no more of it are in all than there are.
   *
   * @param loads as they are, each of a request with all that may go in; a batch that several may
   *     take of is on each of their lists, with the same id and quantity
   * @param effort how much is tried: 10,000 is about a second
   */
  default Optional<List<InspectedLoad>> together(List<Load> loads, int effort, long seed) {
    return Optional.empty();
  }
}
