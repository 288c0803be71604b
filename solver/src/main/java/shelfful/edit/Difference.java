package shelfful.edit;

import java.util.HashMap;
import java.util.Map;
import shelfful.load.Layer;
import shelfful.load.Placement;

/**
 * How two plans differ, piece by piece.
 *
 * @param moved pieces that stand elsewhere, or turned otherwise
 * @param putIn pieces that stand in the later one alone
 * @param takenOut pieces that stand in the earlier one alone
 * @param held pins and locks that were set or let go
 */
public record Difference(int moved, int putIn, int takenOut, int held) {

  /** What was done from one plan to another. */
  public static Difference between(WorkPlan earlier, WorkPlan later) {
    Map<String, String> before = places(earlier);
    Map<String, String> after = places(later);
    int moved = 0;
    int takenOut = 0;
    for (Map.Entry<String, String> one : before.entrySet()) {
      String now = after.remove(one.getKey());
      takenOut += now == null ? 1 : 0;
      moved += now == null || now.equals(one.getValue()) ? 0 : 1;
    }
    return new Difference(moved, after.size(), takenOut, held(earlier, later));
  }

  private static Map<String, String> places(WorkPlan plan) {
    Map<String, String> places = new HashMap<>();
    for (Layer layer : plan.load().layers()) {
      for (Placement place : layer.placements()) {
        places.put(place.pieceId(), layer.id() + " " + place);
      }
    }
    return places;
  }

  private static int held(WorkPlan earlier, WorkPlan later) {
    long pins =
        earlier.pinned().stream().filter(id -> !later.isPinned(id)).count()
            + later.pinned().stream().filter(id -> !earlier.isPinned(id)).count();
    long locks =
        earlier.locked().stream().filter(id -> !later.isLocked(id)).count()
            + later.locked().stream().filter(id -> !earlier.isLocked(id)).count();
    return (int) (pins + locks);
  }
}
