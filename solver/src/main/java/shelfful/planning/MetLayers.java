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
    Place place = new Place(spot.index(), onTop);
    List<Place> here = places.computeIfAbsent(space.number(), number -> new ArrayList<>());
    Set<KnownLayer> known =
        bySpace.computeIfAbsent(space.number(), number -> new LinkedHashSet<>());
    if (!here.contains(place)) {
      here.add(place);
      known.forEach(layer -> pool.add(place.spot(), onTop, layer));
    }
    KnownLayer layer = new KnownLayer(kinds, classes.of(kinds));
    if (known.add(layer)) {
      here.forEach(at -> pool.add(at.spot(), at.onTop(), layer));
    }
  }

  /** Takes over what was met in another run of the same spaces and kinds. */
  void learnFrom(MetLayers other) {
    other.places.forEach(
        (space, theirs) -> {
          List<Place> here = places.computeIfAbsent(space, number -> new ArrayList<>());
          theirs.stream().filter(place -> !here.contains(place)).forEach(here::add);
        });
    other.bySpace.forEach(
        (space, layers) ->
            bySpace.computeIfAbsent(space, number -> new LinkedHashSet<>()).addAll(layers));
    bySpace.forEach(
        (space, layers) ->
            places
                .getOrDefault(space, List.of())
                .forEach(at -> layers.forEach(l -> pool.add(at.spot(), at.onTop(), l))));
  }

  LayerPool pool() {
    return pool;
  }
}
