package shelfful.schedule;

import java.util.ArrayList;
import java.util.Arrays;
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
  private record Alike(UnitKind kind, BitSet firings, boolean stays) {}

  /** A unit of a chunk. */
  private record Unit(Chunk chunk, int number) {}

  private static final class Group {
    private final String name;
    private final Alike alike;
    private final List<Unit> units = new ArrayList<>();
    private int given;

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

    /** A batch of each of its parts. */
    List<Batch> batches(int weight) {
      UnitKind kind = alike.kind();
      Optional<String> set = kind.parts().size() > 1 ? Optional.of(name) : Optional.empty();
      int quantity = Math.min(units.size(), Batch.MOST_PIECES);
      List<Batch> batches = new ArrayList<>();
      for (int part = 0; part < kind.parts().size(); part++) {
        String id = name + "." + part;
        batches.add(
            kind.parts().get(part).batch(id, quantity, kind.kind(), set, alike.stays(), weight));
      }
      return batches;
    }
  }

  /**
   * Adds the units of a chunk.
   *
   * @param firings that they may go into; one at least
   * @param stays whether they have to stay in the one that they are in
   * @return the names of each unit's parts, in the order of the numbers
   */
  List<List<String>> add(Chunk chunk, BitSet firings, boolean stays) {
    Alike alike = new Alike(chunk.lot().kind(FiringKind.GLAZE).orElseThrow(), firings, stays);
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

  /** For each of so many firings what may go in, each piece counted by the room it takes. */
  List<List<Batch>> batches(int firings, RoomBook room) {
    int[] each = groups.stream().mapToInt(group -> room.each(group.alike.kind(), 0)).toArray();
    // What takes most may take more than a batch may weigh.
    int most = Math.max(Batch.MOST_WEIGHT, Arrays.stream(each).max().orElse(1));
    List<List<Batch>> batches = new ArrayList<>();
    for (int firing = 0; firing < firings; firing++) {
      List<Batch> here = new ArrayList<>();
      for (int group = 0; group < each.length; group++) {
        if (groups.get(group).alike.firings().get(firing)) {
          double weight = each[group] / (double) most * Batch.MOST_WEIGHT;
          here.addAll(groups.get(group).batches((int) Math.max(1, Math.round(weight))));
        }
      }
      batches.add(here);
    }
    return batches;
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
