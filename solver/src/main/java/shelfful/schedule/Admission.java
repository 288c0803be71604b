package shelfful.schedule;

/** Whether ware may still go into a glaze firing whose time is settled. */
final class Admission {
  private final Ground ground;
  private final Remainder remainder;

  Admission(Ground ground, RoomBook room) {
    this.ground = ground;
    this.remainder = new Remainder(ground, room);
  }

  /**
   * Whether a chunk is ready by then, is not late after it, and is meant for such a firing. What
   * asked to go together and is left may go anywhere: better apart than not at all.
   */
  boolean mayGoIn(Chunk chunk, RealFiring firing) {
    return chunk.glaze()
        && !chunk.bisque()
        && chunk.ready() <= firing.times().loads()
        && ground.wanted(chunk.lot()) >= ground.clock().day(firing.times().unpacked())
        && remainder.mayGo(chunk.lot(), firing.program());
  }

  /** Whether it is of an order that asked to go together: what is in a firing stays there. */
  boolean goesTogether(Chunk chunk) {
    return chunk.lot().members().stream()
        .anyMatch(
            line -> line.batch().order().filter(ground.request().together()::contains).isPresent());
  }
}
