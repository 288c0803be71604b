package shelfful.app;

import java.util.Locale;
import shelfful.bound.LoadBound;
import shelfful.load.LoadRequest;

/**
 * What no load of a request can exceed, by proof.
 *
 * @param pieces no load has more in
 * @param cause what it is owed to, in words
 */
public record LoadLimit(int pieces, String cause) {
  private static final int STEPS = 120;

  /** Works out the limit; takes a second or so for a list of a few hundred pieces. */
  public static LoadLimit of(LoadRequest request) {
    LoadBound bound = LoadBound.of(request);
    bound.refinePieces(STEPS);
    return new LoadLimit(bound.mostPieces(), bound.cause().words());
  }

  /** How near a number of pieces comes, as a sentence. */
  public String sentence(int placed) {
    return placed >= pieces
        ? String.format(Locale.ROOT, "%d in: full, no setting can hold more (%s).", placed, cause)
        : String.format(
            Locale.ROOT, "%d in; no setting can hold more than %d (%s).", placed, pieces, cause);
  }
}
