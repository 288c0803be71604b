package shelfful.schedule;

/** Whether ware may still go into a glaze firing whose time is settled. */
final class Admission {
  private final Ground ground;
  private final Remainder remainder;

  Admission(Ground ground, RoomBook room) {
    this.ground = ground;
    this.remainder = new Remainder(ground, room);
  }

  /** Whether a chunk is ready by then, is not late after it, and is meant for such a firing. */
  boolean mayGoIn(Chunk chunk, RealFiring firing) {
    return chunk.glaze()
        && !chunk.bisque()
        && chunk.ready() <= firing.times().loads()
        && !goesTogether(chunk)
        && ground.wanted(chunk.lot()) >= ground.clock().day(firing.times().unpacked())
        && remainder.mayGo(chunk.lot(), firing.program());
  }

  /** Whether it is of an order that asked to go together: that stays where it is. */
  boolean goesTogether(Chunk chunk) {
    return chunk.lot().members().stream()
        .anyMatch(
            line -> line.batch().order().filter(ground.request().together()::contains).isPresent());
  }
}
