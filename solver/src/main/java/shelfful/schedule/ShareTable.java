package shelfful.schedule;

import java.util.List;

/** The figures of all shares laid out in arrays, since a search asks for them millions of times. */
final class ShareTable {
  private final boolean[][] fits;
  private final int[][] usage;
  private final int[][] byWanted;
  private final int[] before;
  private final long[] ready;
  private final long[] wanted;

  /**
   * A table.
   *
   * @param programs how many programs there are
   * @param kilns how many kilns
   */
  ShareTable(List<Share> shares, int programs, int kilns) {
    int count = shares.size();
    fits = new boolean[programs][count];
    usage = new int[kilns][count];
    before = new int[count];
    ready = new long[count];
    wanted = new long[count];
    for (Share share : shares) {
      int index = share.index();
      before[index] = share.before();
      wanted[index] = share.wanted();
      ready[index] = share.before() < 0 ? share.chunk().ready() : share.chunk().lot().glazeReady();
      for (int program = 0; program < programs; program++) {
        fits[program][index] = share.taken().get(program);
      }
      for (int kiln = 0; kiln < kilns; kiln++) {
        usage[kiln][index] = share.usage(kiln);
      }
    }
    List<Share> sorted = shares.stream().sorted(Share.BY_WANTED).toList();
    byWanted = new int[programs][];
    for (int program = 0; program < programs; program++) {
      boolean[] fitting = fits[program];
      byWanted[program] =
          sorted.stream().mapToInt(Share::index).filter(index -> fitting[index]).toArray();
    }
  }

  boolean fits(int share, KilnProgram program) {
    return fits[program.index()][share];
  }

  int usage(int share, int kiln) {
    return usage[kiln][share];
  }

  /** The shares a program takes, what is wanted first before the rest; not to be changed. */
  int[] byWanted(KilnProgram program) {
    return byWanted[program.index()];
  }

  /** The share that must be fired before, or −1. */
  int before(int share) {
    return before[share];
  }

  /** When it is ready if nothing must be fired before, else the least it can be. */
  long ready(int share) {
    return ready[share];
  }

  long wanted(int share) {
    return wanted[share];
  }
}
