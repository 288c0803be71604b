package shelfful.ui.hand;

import shelfful.edit.Tentative;

/**
 * A piece in the hand.
 *
 * @param tentative where it is held and what the judge measures there
 * @param told what is nearest, in words with its figure
 * @param figure the same as short as a label
 */
public record Held(Tentative tentative, String told, String figure) {
  public String pieceId() {
    return tentative.place().pieceId();
  }

  /** Whether a rule forbids it to stand here. */
  public boolean isForbidden() {
    return !tentative.mayStand();
  }
}
