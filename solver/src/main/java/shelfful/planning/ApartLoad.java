package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.kiln.Column;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Point;

/** Writes a load of a plan with joined shelves with the shelves there are. */
final class ApartLoad {
  private final JoinedPlan joined;
  private final Stand stand;
  private final Load load;

  /** For each layer of the joined load, the ids of the layers it becomes. */
  private final Map<String, List<Layer>> parts = new HashMap<>();

  private ApartLoad(JoinedPlan joined, Load load) {
    this.joined = joined;
    this.stand = new Stand(joined.asked(), joined.apart());
    this.load = load;
  }

  /** The same setting on shelves that lie apart, for what was asked. */
  static Load of(JoinedPlan joined, Load load) {
    return new ApartLoad(joined, load).write();
  }

  private Load write() {
    List<Layer> layers = layers();
    List<StandingPost> posts = new ArrayList<>();
    for (StandingPost post : load.posts()) {
      List<String> carried = post.carries().stream().flatMap(id -> carried(id, post.at())).toList();
      posts.add(new StandingPost(post.at(), post.base(), post.postIds(), carried));
    }
    return new Load(joined.asked(), load.columnPlanId(), layers, posts, load.leftOut());
  }

  /** By column, lowest first, and named in that order. */
  private List<Layer> layers() {
    List<Layer> layers = new ArrayList<>();
    for (Column column : joined.apart().columns()) {
      for (Layer layer : load.layers()) {
        Optional<TwinColumns> pair = joined.pair(layer.columnId());
        if (pair.isEmpty() && layer.columnId().equals(column.id())) {
          add(layers, layer, column.id(), layer.place(), layer.placements());
        } else if (pair.isPresent() && pair.get().isOf(column)) {
          split(layers, layer, column, pair.get());
        }
      }
    }
    return layers;
  }

  private void split(List<Layer> layers, Layer layer, Column column, TwinColumns pair) {
    if (pair.isWithinAColumn()) {
      for (int place = 0; place < 2; place++) {
        boolean first = pair.firstPlace() == place;
        add(layers, layer, column.id(), place, side(layer, first));
      }
    } else {
      boolean first = pair.first().equals(column);
      int place = first ? pair.firstPlace() : pair.secondPlace();
      add(layers, layer, column.id(), place, side(layer, first));
    }
  }

  private List<Placement> side(Layer layer, boolean first) {
    Joint joint = joined.joint(layer.columnId()).orElseThrow();
    ShelfFrame frame =
        ShelfFrame.of(
            joined.plan().columns().stream()
                .filter(column -> column.id().equals(layer.columnId()))
                .findFirst()
                .orElseThrow()
                .places()
                .get(0));
    List<Placement> side = new ArrayList<>();
    for (Pile pile : Pile.of(layer.placements())) {
      Point at = pile.lowest().at();
      double[] there = frame.toShelf(at.x().millimetres(), at.y().millimetres());
      if (joint.isOnFirst(there[0], there[1]) == first) {
        side.addAll(pile.pieces());
      }
    }
    return side;
  }

  private void add(
      List<Layer> layers, Layer from, String columnId, int place, List<Placement> placements) {
    Layer layer =
        new Layer(
            "L" + (layers.size() + 1),
            columnId,
            from.level(),
            place,
            joined.half(from.shelfId()),
            from.z(),
            placements);
    layers.add(layer);
    parts.computeIfAbsent(from.id(), id -> new ArrayList<>()).add(layer);
  }

  /** Of the layers that a joined one becomes, those whose shelf a post reaches under. */
  private Stream<String> carried(String layerId, Point at) {
    List<Layer> layers = parts.getOrDefault(layerId, List.of());
    return layers.stream()
        .filter(layer -> layers.size() == 1 || reachesUnder(layer, at))
        .map(Layer::id);
  }

  private boolean reachesUnder(Layer layer, Point at) {
    for (int c = 0; c < stand.columns(); c++) {
      if (stand.column(c).id().equals(layer.columnId())) {
        Spot spot = stand.spotsOf(c).get(layer.place());
        return spot.owner().posts().contains(at) && PostUnderShelf.touches(stand, spot, at);
      }
    }
    return false;
  }
}
