package shelfful.schedule;

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
}
