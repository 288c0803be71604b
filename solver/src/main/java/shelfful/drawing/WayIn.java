package shelfful.drawing;

import java.util.List;
import java.util.function.BiPredicate;
import shelfful.kiln.Loading;

/**
 * What stands between a place on a shelf and the hand that sets a piece there.
 *
 * <p>Into a front-loader a piece comes level, under the posts and the next shelf's place, along the
 * straight lane from the front edge: a body in that lane at a height both have is in the way. A
 * handle in the lane is passed by turning the piece, so it only counts where there is a choice.
 *
 * <p>Into a top-loader a piece comes straight down: whatever lies over any of it is in the way. The
 * arm leans in over the front wall, so ware in the lane to the front is passed over by the arm,
 * which counts where there is a choice.
 */
final class WayIn {
  private final Parts earlier;
  private final Parts later;
  private final Loading loading;

  private WayIn(Parts earlier, Parts later, Loading loading) {
    this.earlier = earlier;
    this.later = later;
    this.loading = loading;
  }

  /**
   * A piece cut in slices.
   *
   * @param bands its body and catcher
   * @param lugs its handles and spouts
   */
  record Parts(List<Slice> bands, List<Slice> lugs) {
    static Parts of(SetPiece piece) {
      return new Parts(Slice.bands(piece), Slice.lugs(piece));
    }
  }

  /** The way of one piece into a place when another stands already. */
  static WayIn past(Parts standing, Parts coming, Loading loading) {
    return new WayIn(standing, coming, loading);
  }

  /** Whether the other stands between the place and the hand: it must be set later. */
  boolean isBarred() {
    return loading == Loading.FRONT
        ? any(earlier.bands, later.bands, Slice::isInFrontOf)
        : anyPart(Slice::isOver);
  }

  /** Whether the other makes the way harder: it is better set later. */
  boolean isHampered() {
    return loading == Loading.FRONT
        ? anyPart(Slice::isInFrontOf)
        : any(earlier.bands, later.bands, Slice::isInFrontOf);
  }

  private boolean anyPart(BiPredicate<Slice, Slice> meets) {
    return any(earlier.bands, later.bands, meets)
        || any(earlier.lugs, later.bands, meets)
        || any(earlier.bands, later.lugs, meets)
        || any(earlier.lugs, later.lugs, meets);
  }

  private static boolean any(
      List<Slice> standing, List<Slice> coming, BiPredicate<Slice, Slice> meets) {
    return standing.stream()
        .anyMatch(one -> coming.stream().anyMatch(other -> meets.test(one, other)));
  }
}
