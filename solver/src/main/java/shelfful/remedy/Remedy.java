package shelfful.remedy;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;

/**
 * One way to bring waiting pieces in that was tried and passed the judge.
 *
 * @param kind what is done
 * @param placed how many pieces of the group go in by it, at least 1
 * @param sentence what is done, with its figures, for people
 * @param load the load it leads to; for {@link RemedyKind#NEXT_FIRING} the load of that firing
 * @param change what differs from the load as it is; of no meaning for the next firing
 * @param relaxedBy by how much a distance is kept less strictly; only for {@link
 *     RemedyKind#GAP_RELAXED}
 */
public record Remedy(
    RemedyKind kind,
    int placed,
    String sentence,
    InspectedLoad load,
    Change change,
    Optional<Length> relaxedBy) {
  /** Refuses a remedy that places nothing. */
  public Remedy {
    if (placed < 1) {
      throw new IllegalArgumentException("A remedy places at least one piece, not " + placed);
    }
  }

  /** The request that was changed, as it is asked after the remedy. */
  public LoadRequest request() {
    return load.load().request();
  }
}
