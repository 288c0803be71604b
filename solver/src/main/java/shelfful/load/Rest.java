package shelfful.load;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.PileWay;

/**
 * What carries a piece, and how it lies. Most pieces stand on their shelf by themselves; in a
 * bisque firing a piece can rest on or in another, and the lowest of a pair can stand on its rim.
 *
 * @param on the piece that carries it; empty when the shelf does
 * @param way how it rests on or in that piece; there exactly when that is
 * @param lift of its lowest point over the shelf; 0 on the shelf
 * @param upsideDown whether it is turned over about its own x axis, its rim below
 */
public record Rest(Optional<String> on, Optional<PileWay> way, Length lift, boolean upsideDown) {
  /** Upright on the shelf. */
  public static final Rest ON_SHELF =
      new Rest(Optional.empty(), Optional.empty(), Length.ZERO, false);

  /** On the shelf, upside down: the lower piece of two set foot to foot. */
  public static final Rest ON_ITS_RIM =
      new Rest(Optional.empty(), Optional.empty(), Length.ZERO, true);

  /** Refuses a way without a piece that carries, and the other way round. */
  public Rest {
    if (on.isPresent() != way.isPresent()) {
      throw new IllegalArgumentException(
          "A piece that rests on another must say on which and how, others neither");
    }
  }

  /** On or in another piece; only one set rim to rim is upside down. */
  public static Rest on(String pieceId, PileWay way, Length lift) {
    return new Rest(Optional.of(pieceId), Optional.of(way), lift, way == PileWay.RIM_TO_RIM);
  }

  /** Whether the shelf carries it. */
  public boolean isOnShelf() {
    return on.isEmpty();
  }

  /** Whether there is nothing to say of it: upright on the shelf. */
  public boolean isPlain() {
    return equals(ON_SHELF);
  }
}
