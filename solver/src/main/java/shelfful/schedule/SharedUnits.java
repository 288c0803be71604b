package shelfful.schedule;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;

/**
 * The ware that several glaze firings share, as batches of a load list: units that are alike to the
 * shelf and may go into the same firings are one batch, or a batch for each of their parts, on the
 * list of each of these firings.
 */
final class SharedUnits {
  private final List<Group> groups = new ArrayList<>();
  private final Map<Alike, Group> byAlike = new HashMap<>();

  /** What makes units alike. */
  private record Alike(UnitKind kind, BitSet firings) {}

  /** A unit of a chunk. */
  private record Unit(Chunk chunk, int number) {}

  private static final class Group {
    private final String name;
    private final Alike alike;
    private final List<Unit> units = new ArrayList<>();
    private int given;

    /** Of each piece; 0 before it is reckoned, for what is known of room may change meanwhile. */
    private int weight;

    Group(String name, Alike alike) {
      this.name = name;
      this.alike = alike;
    }

    /** The names of a unit's parts, counted from 0. */
    List<String> pieceIds(int unit) {
      List<String> ids = new ArrayList<>();
      for (int part = 0; part < alike.kind().parts().size(); part++) {
        ids.add(String.format(Locale.ROOT, "%s.%d-%03d", name, part, unit + 1));
      }
      return ids;
    }
  }

  /**
   * Adds the units of a chunk.
   *
   * @param firings that they may go into; one at least
   * @return the names of each unit's parts, in the order of the numbers
   */
  List<List<String>> add(Chunk chunk, BitSet firings) {
    Alike alike = new Alike(chunk.lot().kind(FiringKind.GLAZE).orElseThrow(), firings);
    Group group = byAlike.computeIfAbsent(alike, this::group);
    List<List<String>> names = new ArrayList<>();
    for (int number : chunk.numbers()) {
      names.add(group.pieceIds(group.units.size()));
      group.units.add(new Unit(chunk, number));
    }
    return names;
  }

  private Group group(Alike alike) {
    Group group = new Group("G" + groups.size(), alike);
    groups.add(group);
    return group;
  }

  /** What may go into a firing, each piece counted by the room it takes. */
  List<Batch> batches(int firing, RoomBook room) {
    List<Batch> batches = new ArrayList<>();
    for (Group group : groups) {
      UnitKind kind = group.alike.kind();
      group.weight = group.weight == 0 ? weight(kind, room) : group.weight;
      for (int part = 0; part < kind.parts().size() && group.alike.firings().get(firing); part++) {
        Optional<String> set = kind.parts().size() > 1 ? Optional.of(group.name) : Optional.empty();
        batches.add(
            kind.parts()
                .get(part)
                .batch(
                    group.name + "." + part,
                    Math.min(group.units.size(), Batch.MOST_PIECES),
                    kind.kind(),
                    set,
                    false,
                    group.weight));
      }
    }
    return batches;
  }

  /** The room that a piece takes, by what fits into the range of weights. */
  private int weight(UnitKind kind, RoomBook room) {
    int most = groups.stream().mapToInt(group -> room.each(group.alike.kind(), 0)).max().orElse(1);
    double each = room.each(kind, 0) / (double) Math.max(most, Batch.MOST_WEIGHT);
    return (int) Math.max(1, Math.round(Batch.MOST_WEIGHT * each));
  }

  /** Units that stand in a load, and the chunks they are given to. */
  record Taken(
      Map<UnitKind, List<LoadAnswer.PlacedUnit>> placed, Map<Chunk, List<Integer>> chunks) {}

  /**
   * Gives the units that stand in a load to chunks that may go there: of units that are alike the
   * first that no other load was given.
   *
   * @param standing names of pieces
   */
  Taken take(Set<String> standing) {
    Map<UnitKind, List<LoadAnswer.PlacedUnit>> placed = new HashMap<>();
    Map<Chunk, List<Integer>> chunks = new LinkedHashMap<>();
    for (Group group : groups) {
      for (int unit = 0; unit < group.units.size(); unit++) {
        List<String> ids = group.pieceIds(unit);
        if (standing.containsAll(ids)) {
          placed
              .computeIfAbsent(group.alike.kind(), any -> new ArrayList<>())
              .add(new LoadAnswer.PlacedUnit(ids));
          Unit next = group.units.get(group.given++);
          chunks.computeIfAbsent(next.chunk(), any -> new ArrayList<>()).add(next.number());
        }
      }
    }
    return new Taken(placed, chunks);
  }

  /** What no load was given. */
  List<Chunk> left() {
    Map<Chunk, List<Integer>> left = new LinkedHashMap<>();
    for (Group group : groups) {
      for (Unit unit : group.units.subList(group.given, group.units.size())) {
        left.computeIfAbsent(unit.chunk(), any -> new ArrayList<>()).add(unit.number());
      }
    }
    return left.entrySet().stream().map(one -> one.getKey().of(one.getValue())).toList();
  }
}
