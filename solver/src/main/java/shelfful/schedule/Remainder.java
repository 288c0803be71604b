package shelfful.schedule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

  /** What is left of what can be glaze fired at all. */
  Set<UnitKind> kinds(List<Chunk> open) {
    Set<UnitKind> kinds = new HashSet<>();
    for (Chunk chunk : open) {
      if (chunk.glaze() && kilnful(chunk.lot()) > 0) {
        kinds.add(kind(chunk.lot()));
      }
    }
    return kinds;
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
