package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import shelfful.choice.KnownLayer;
import shelfful.choice.LayerPool;
import shelfful.planning.ShelfSpaces.NumberedSpace;

/**
 * Every layer content met in a run, sorted into the pool by the places it may stand at: places
 * whose spaces come out alike share what was met at any of them.
 */
final class MetLayers {
  private final LayerPool pool;
  private final HeightClasses classes;
  private final Map<Integer, Set<KnownLayer>> bySpace = new TreeMap<>();
  private final Map<Integer, List<Place>> places = new HashMap<>();

  MetLayers(int spots, HeightClasses classes) {
    this.pool = new LayerPool(spots);
    this.classes = classes;
  }

  private record Place(int spot, boolean onTop) {}

  /** Takes note of kinds that were found to fit in a space at a place. */
  void met(Spot spot, boolean onTop, NumberedSpace space, int[] kinds) {
    at(space.number(), new Place(spot.index(), onTop));
    fits(space.number(), new KnownLayer(kinds, classes.of(kinds)));
  }

  private void at(int space, Place place) {
    List<Place> here = places.computeIfAbsent(space, number -> new ArrayList<>());
    if (!here.contains(place)) {
      here.add(place);
      bySpace
          .getOrDefault(space, Set.of())
          .forEach(layer -> pool.add(place.spot(), place.onTop(), layer));
    }
  }

  private void fits(int space, KnownLayer layer) {
    if (bySpace.computeIfAbsent(space, number -> new LinkedHashSet<>()).add(layer)) {
      places
          .getOrDefault(space, List.of())
          .forEach(place -> pool.add(place.spot(), place.onTop(), layer));
    }
  }

  /** Whether nothing was met in a space so far. */
  boolean isNew(NumberedSpace space) {
    return !places.containsKey(space.number());
  }

  /** Takes note of kinds that are known to fit in a space, wherever it is. */
  void fits(NumberedSpace space, int[] kinds) {
    fits(space.number(), new KnownLayer(kinds, classes.of(kinds)));
  }

  /** Takes over what was met in another run of the same spaces and kinds. */
  void learnFrom(MetLayers other) {
    other.places.forEach((space, theirs) -> theirs.forEach(place -> at(space, place)));
    other.bySpace.forEach((space, layers) -> layers.forEach(layer -> fits(space, layer)));
  }

  LayerPool pool() {
    return pool;
  }
}
