package shelfful.ware;

import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * The disc that catches what runs off a piece: it lies under the foot, wider all round, and lifts
 * the piece.
 *
 * @param thickness how far it lifts the piece, positive
 * @param margin how far it reaches past the foot all round
 * @param mass of one, as a fair weight for the shelf's limit
 */
public record Catcher(Length thickness, Length margin, Mass mass) {
  /** Refuses a catcher without thickness or with a negative margin. */
  public Catcher {
    if (!thickness.isPositive() || margin.micrometres() < 0) {
      throw new IllegalArgumentException(
          "A catcher must be thicker than 0 and have a margin of at least 0");
    }
  }
}
