package shelfful.bench;

import java.util.Optional;
import shelfful.load.LoadRequest;

/**
 * What no load of a request can exceed.
 *
 * @param pieces at most so many
 * @param worth at most so many points
 */
record Limit(long pieces, long worth) {

  /** Where limits come from. */
  @FunctionalInterface
  interface Source {
    /** The proven limit, or empty when there is none to be had. */
    Optional<Limit> of(LoadRequest request);
  }

  /** No bound for the whole load is known to this program yet. */
  static final Source UNKNOWN = request -> Optional.empty();
}
