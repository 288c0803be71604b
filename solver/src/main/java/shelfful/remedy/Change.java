package shelfful.remedy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Batch;
import shelfful.ware.Part;
import shelfful.ware.Piece;

/**
 * What a remedy does to a load. Pieces of one batch and part are alike, so they are counted, not
 * named: where two of them change places nothing has happened.
 *
 * @param moved pieces that stood in the earlier load and stand elsewhere in the later
 * @param waiting how many fewer of a batch are in, by batch id; only batches that lose any
 * @param puts how many more of a batch are in, by batch id; only batches that gain any
 * @param newHeights layers that stand on posts of another length, or are new, with that length
 * @param emptied layers of the earlier load that the later has no more
 */
public record Change(
    int moved,
    Map<String, Integer> waiting,
    Map<String, Integer> puts,
    Map<LayerPlace, Length> newHeights,
    List<LayerPlace> emptied) {
  /** Takes its own copies, in order. */
  public Change {
    waiting = java.util.Collections.unmodifiableMap(new TreeMap<>(waiting));
    puts = java.util.Collections.unmodifiableMap(new TreeMap<>(puts));
    newHeights = java.util.Collections.unmodifiableMap(new TreeMap<>(newHeights));
    emptied = List.copyOf(emptied);
  }

  private record Alike(String batchId, Part part) {}

  private record Stance(Alike alike, LayerPlace layer, Point at, Angle turn) {}

  /** What lies between two loads of the same list. */
  public static Change between(Load earlier, Load later) {
    Map<Stance, Integer> before = stances(earlier);
    Map<Stance, Integer> after = stances(later);
    Map<Alike, Integer> in = new HashMap<>();
    after.forEach((stance, count) -> in.merge(stance.alike(), count, Integer::sum));
    Map<Alike, Integer> gone = new HashMap<>();
    before.forEach(
        (stance, count) -> {
          in.merge(stance.alike(), -count, Integer::sum);
          int stays = Math.min(count, after.getOrDefault(stance, 0));
          gone.merge(stance.alike(), count - stays, Integer::sum);
        });
    Map<String, Integer> waiting = new TreeMap<>();
    Map<String, Integer> puts = new TreeMap<>();
    int moved = gone.values().stream().mapToInt(Integer::intValue).sum();
    for (Map.Entry<Alike, Integer> one : in.entrySet()) {
      int more = one.getValue();
      if (more != 0) {
        (more < 0 ? waiting : puts).merge(one.getKey().batchId(), Math.abs(more), Integer::sum);
        moved -= Math.max(0, -more);
      }
    }
    return new Change(moved, waiting, puts, newHeights(earlier, later), emptied(earlier, later));
  }

  private static Map<Stance, Integer> stances(Load load) {
    Map<String, Piece> pieces = new HashMap<>();
    load.request().pieces().forEach(piece -> pieces.put(piece.id(), piece));
    Map<Stance, Integer> stances = new HashMap<>();
    for (Layer layer : load.layers()) {
      for (Placement one : layer.placements()) {
        Piece piece = pieces.get(one.pieceId());
        Batch batch = piece.batch();
        Alike alike = new Alike(batch.id(), piece.part());
        stances.merge(
            new Stance(alike, LayerPlace.of(layer), one.at(), one.turn()), 1, Integer::sum);
      }
    }
    return stances;
  }

  private static Map<LayerPlace, Length> newHeights(Load earlier, Load later) {
    Map<LayerPlace, Length> before = heights(earlier);
    Map<LayerPlace, Length> changed = heights(later);
    changed.entrySet().removeIf(one -> one.getValue().equals(before.get(one.getKey())));
    return changed;
  }

  private static List<LayerPlace> emptied(Load earlier, Load later) {
    TreeSet<LayerPlace> gone = new TreeSet<>(heights(earlier).keySet());
    gone.removeAll(heights(later).keySet());
    return List.copyOf(gone);
  }

  /** The length of the posts each layer stands on. */
  private static Map<LayerPlace, Length> heights(Load load) {
    Map<LayerPlace, Length> heights = new TreeMap<>();
    for (Layer layer : load.layers()) {
      Length length =
          load.posts().stream()
              .filter(post -> post.carries().contains(layer.id()))
              .findFirst()
              .map(post -> length(load, post))
              .orElse(Length.ZERO);
      heights.put(LayerPlace.of(layer), length);
    }
    return heights;
  }

  private static Length length(Load load, StandingPost post) {
    Length length = Length.ZERO;
    for (String id : post.postIds()) {
      length =
          length.plus(
              load.request().studio().post(id).map(one -> one.length()).orElse(Length.ZERO));
    }
    return length;
  }

  /** Whether every batch has at least as many in as before. */
  public boolean losesNothing() {
    return waiting.isEmpty();
  }

  /** Whether posts and shelves are as they were. */
  public boolean leavesFurniture() {
    return newHeights.isEmpty() && emptied.isEmpty();
  }
}
