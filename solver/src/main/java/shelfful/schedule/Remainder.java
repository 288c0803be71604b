package shelfful.schedule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.ware.FiringKind;

/** What is left of a week. */
final class Remainder {
  private final Ground ground;
  private final RoomBook room;

  Remainder(Ground ground, RoomBook room) {
    this.ground = ground;
    this.room = room;
  }

  /**
   * How many glaze kilnfuls are left of what can be fired at all, each unit in the kiln that it
   * takes least of; infinite where some is not bisqued yet.
   */
  double kilnfuls(List<Chunk> open) {
    double sum = 0;
    for (Chunk chunk : open) {
      if (chunk.bisque()) {
        return Double.POSITIVE_INFINITY;
      }
      sum += chunk.glaze() ? chunk.numbers().size() * kilnful(chunk.lot()) : 0;
    }
    return sum;
  }

  /** Of each kind that can be glaze fired at all and is left, the share of all there is. */
  Map<UnitKind, Double> shares(List<Chunk> open) {
    Map<UnitKind, Double> shares = new HashMap<>();
    for (Chunk chunk : open) {
      if (chunk.glaze() && kilnful(chunk.lot()) > 0) {
        UnitKind kind = kind(chunk.lot());
        shares.merge(kind, chunk.numbers().size() / (double) unitsOf(kind), Double::sum);
      }
    }
    return shares;
  }

  private int unitsOf(UnitKind kind) {
    return ground.lots().stream()
        .filter(lot -> lot.kind(FiringKind.GLAZE).filter(kind::equals).isPresent())
        .mapToInt(lot -> lot.numbers().size())
        .sum();
  }

  /** What a unit takes of a kiln; 0 where it goes into none. */
  private double kilnful(Lot lot) {
    double least = Double.POSITIVE_INFINITY;
    for (KilnProgram program : ground.programs()) {
      if (mayGo(lot, program)) {
        double holds = room.goesIn(program.kiln(), FiringKind.GLAZE);
        least = Math.min(least, room.usage(kind(lot), program.kiln()) / holds);
      }
    }
    return Double.isInfinite(least) ? 0 : least;
  }

  /** Whether a lot can be glaze fired by a program. */
  boolean mayGo(Lot lot, KilnProgram program) {
    return ground.suits(program, lot, FiringKind.GLAZE) && !room.refuses(program, kind(lot));
  }

  private static UnitKind kind(Lot lot) {
    return lot.kind(FiringKind.GLAZE).orElseThrow();
  }
}
