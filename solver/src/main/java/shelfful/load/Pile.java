package shelfful.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands on one spot of a shelf: a piece, and all that rests on or in it. It is lifted, turned
 * and taken out as one.
 *
 * @param pieces the lowest first, each of the others after the piece that carries it
 */
public record Pile(List<Placement> pieces) {
  /** Takes its own copy; a pile has at least one piece. */
  public Pile {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("A pile has at least one piece");
    }
  }

  /**
   * The piles of some pieces, in the order of their lowest ones. What rests on nothing that is
   * there begins a pile of its own, so every piece is in exactly one.
   */
  public static List<Pile> of(List<Placement> placements) {
    Set<String> ids = new HashSet<>();
    placements.forEach(one -> ids.add(one.pieceId()));
    Map<String, List<Placement>> carried = new HashMap<>();
    List<Placement> lowest = new ArrayList<>();
    for (Placement one : placements) {
      String on = one.rest().on().filter(ids::contains).orElse(null);
      if (on == null) {
        lowest.add(one);
      } else {
        carried.computeIfAbsent(on, key -> new ArrayList<>()).add(one);
      }
    }
    List<Pile> piles = new ArrayList<>();
    for (Placement one : lowest) {
      piles.add(new Pile(withAllOn(one, carried)));
    }
    // Pieces that rest on each other in a ring have no lowest one.
    carried.values().forEach(rest -> rest.forEach(one -> piles.add(new Pile(List.of(one)))));
    return piles;
  }

  /** What lies on the one found last is found next; each is found once, then struck off. */
  private static List<Placement> withAllOn(Placement lowest, Map<String, List<Placement>> carried) {
    List<Placement> pieces = new ArrayList<>(List.of(lowest));
    for (int i = 0; i < pieces.size(); i++) {
      List<Placement> next = carried.remove(pieces.get(i).pieceId());
      pieces.addAll(next == null ? List.of() : next);
    }
    return pieces;
  }

  /** The pile of some pieces that one of them is in; it must be there. */
  public static Pile with(String pieceId, List<Placement> placements) {
    return of(placements).stream().filter(pile -> pile.holds(pieceId)).findFirst().orElseThrow();
  }

  /** Whether a piece is in it. */
  public boolean holds(String pieceId) {
    return pieces.stream().anyMatch(one -> one.pieceId().equals(pieceId));
  }

  /** The one that stands on the shelf. */
  public Placement lowest() {
    return pieces.get(0);
  }

  /** How many pieces it has. */
  public int size() {
    return pieces.size();
  }
}
