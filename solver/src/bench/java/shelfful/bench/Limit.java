package shelfful.bench;

import java.util.Optional;
import shelfful.bound.LoadBound;
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

  private static final int REFINEMENTS = 200;

  /** The bound that the summary of a plan gives, refined a little further. */
  static final Source PROVEN =
      request -> {
        LoadBound bound = LoadBound.of(request);
        bound.refine(REFINEMENTS);
        return Optional.of(new Limit(bound.mostPieces(), bound.mostWorth()));
      };
}
