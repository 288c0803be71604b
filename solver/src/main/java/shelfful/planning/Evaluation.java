package shelfful.planning;

import java.util.Optional;

/**
 * What the rules say of a sketch: how often each is broken, and how it stands if it stands at all.
 *
 * @param stacking shelves and posts, or empty when the stack cannot be built from the stock
 * @param stackFails 1 when the stack cannot be built
 * @param layersThatDoNotFit how many shelves hold too much
 * @param overloaded how many shelves carry more than their limit
 * @param keptApart how many pairs of glazes are together that must not be
 * @param zonesForbidden how many pieces are in a zone their glaze forbids
 * @param setsSplit how many pieces went in without the rest of their set
 * @param zonesNotLiked how many pieces are outside the zones their glaze likes
 */
record Evaluation(
    Optional<Stacking> stacking,
    int stackFails,
    int layersThatDoNotFit,
    int overloaded,
    int keptApart,
    int zonesForbidden,
    int setsSplit,
    int zonesNotLiked) {

  int broken() {
    return stackFails + layersThatDoNotFit + overloaded + keptApart + zonesForbidden + setsSplit;
  }
}
