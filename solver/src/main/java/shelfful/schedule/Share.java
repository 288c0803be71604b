package shelfful.schedule;

import java.util.Comparator;
import java.util.List;
import shelfful.ware.FiringKind;

/**
 * A chunk on its way into one firing, with all that a score needs of it.
 *
 * @param index among all shares
 * @param chunk the ware
 * @param kind of the firing
 * @param before index of the share that must be fired first, or −1
 * @param pieces that go in
 * @param due days on which pieces are due after this firing
 * @param marks bits of the keep-apart rules it is on the one side of
 * @param foes bits of those it is on the other side of
 * @param order index of an order that asked to go together, or −1
 * @param earlier the kiln and the day of the plan before; kiln −1 when there was none
 * @param taken by which programs, by index
 * @param usage of each kiln
 * @param wanted the first day on which its pieces are wanted, however far the way there; far off if
 *     none is
 */
record Share(
    int index,
    Chunk chunk,
    FiringKind kind,
    int before,
    int pieces,
    List<DuePieces> due,
    long marks,
    long foes,
    int order,
    KilnDay earlier,
    List<Boolean> taken,
    List<Integer> usage,
    long wanted) {

  /**
   * Pieces due on one day.
   *
   * @param day from the first, 0
   * @param pieces how many
   */
  record DuePieces(long day, int pieces) {}

  /**
   * A kiln on a day.
   *
   * @param kiln its index, or −1 for none
   * @param day it is loaded
   */
  record KilnDay(int kiln, long day) {
    static final KilnDay NONE = new KilnDay(-1, 0);
  }

  /** What is wanted first before the rest. */
  static final Comparator<Share> BY_WANTED =
      Comparator.comparingLong(Share::wanted).thenComparingInt(Share::index);

  boolean fits(KilnProgram program) {
    return taken.get(program.index());
  }

  int usage(int kiln) {
    return usage.get(kiln);
  }
}
