package shelfful.inspect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What carries what in the piles of a setting, as the load says it. */
final class Carriers {
  private final Map<String, StandingPiece> carrier = new HashMap<>();
  private final Map<String, List<StandingPiece>> carried = new HashMap<>();

  private Carriers() {}

  static Carriers of(List<StandingPiece> pieces) {
    Carriers carriers = new Carriers();
    if (pieces.stream().allMatch(StandingPiece::isOnShelf)) {
      return carriers;
    }
    Map<String, StandingPiece> byId = new HashMap<>();
    pieces.forEach(piece -> byId.put(piece.id(), piece));
    for (StandingPiece piece : pieces) {
      StandingPiece on = piece.placement().rest().on().map(byId::get).orElse(null);
      if (on != null) {
        carriers.carrier.put(piece.id(), on);
        carriers.carried.computeIfAbsent(on.id(), key -> new ArrayList<>()).add(piece);
      }
    }
    return carriers;
  }

  /** The piece that one rests on; empty on the shelf, and when the load holds no such piece. */
  Optional<StandingPiece> under(StandingPiece piece) {
    return Optional.ofNullable(carrier.get(piece.id()));
  }

  /** What rests on or in a piece and on nothing else. */
  List<StandingPiece> on(StandingPiece piece) {
    return carried.getOrDefault(piece.id(), List.of());
  }

  /** The pieces under one, the nearest first; each once where they rest on each other in a ring. */
  List<StandingPiece> allUnder(StandingPiece piece) {
    List<StandingPiece> under = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    StandingPiece next = carrier.get(piece.id());
    while (next != null && seen.add(next.id())) {
      under.add(next);
      next = carrier.get(next.id());
    }
    return under;
  }

  /** The pieces that a piece carries, straight or through others. */
  List<StandingPiece> allOn(StandingPiece piece) {
    List<StandingPiece> all = new ArrayList<>();
    Set<String> seen = new HashSet<>(Set.of(piece.id()));
    List<StandingPiece> open = new ArrayList<>(on(piece));
    while (!open.isEmpty()) {
      StandingPiece next = open.remove(0);
      if (seen.add(next.id())) {
        all.add(next);
        open.addAll(on(next));
      }
    }
    return all;
  }

  /** The tolerances that a piece's height is uncertain by: its own and those of all under it. */
  long heightTolerance(StandingPiece piece) {
    long sum = piece.tolerance();
    for (StandingPiece under : allUnder(piece)) {
      sum += under.tolerance();
    }
    return sum;
  }

  /** Whether two pieces are in one pile: then they touch by design. */
  boolean isOnePile(StandingPiece one, StandingPiece other) {
    return !carrier.isEmpty() && lowest(one).equals(lowest(other));
  }

  private String lowest(StandingPiece piece) {
    List<StandingPiece> under = allUnder(piece);
    return under.isEmpty() ? piece.id() : under.get(under.size() - 1).id();
  }
}
