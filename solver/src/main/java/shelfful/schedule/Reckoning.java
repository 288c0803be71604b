package shelfful.schedule;

import java.util.Optional;

/**
 * What becomes of an assignment: which turns are fired and when, and which shares get their firing.
 * Every firing is loaded as early as its ware, its kiln and the working hours allow.
 */
final class Reckoning {
  private static final long UNKNOWN = Long.MAX_VALUE;

  private final Board board;
  private final int[] turnOf;
  private final KilnProgram[] programOf;
  private final Turnaround[] times;
  private final boolean[] settled;
  private final boolean[] goes;
  private final int[][] sharesOf;
  private final int[][] turnsOf;

  /**
   * Reckons.
   *
   * @param turnOf turn of each share, −1 for none
   * @param programOf program of each turn, null for none
   */
  Reckoning(Board board, int[] turnOf, KilnProgram[] programOf) {
    this.board = board;
    this.turnOf = turnOf.clone();
    this.programOf = programOf.clone();
    this.times = new Turnaround[programOf.length];
    this.settled = new boolean[programOf.length];
    this.goes = new boolean[turnOf.length];
    this.sharesOf = sharesByTurn();
    this.turnsOf = turnsByTrack();
    run();
  }

  private int[][] sharesByTurn() {
    int[] count = new int[programOf.length];
    for (int share = 0; share < turnOf.length; share++) {
      int turn = turnOf[share];
      goes[share] =
          turn >= 0 && programOf[turn] != null && board.table().fits(share, programOf[turn]);
      if (goes[share]) {
        count[turn]++;
      }
    }
    int[][] shares = new int[programOf.length][];
    for (int turn = 0; turn < count.length; turn++) {
      shares[turn] = new int[count[turn]];
    }
    for (int share = turnOf.length - 1; share >= 0; share--) {
      if (goes[share]) {
        shares[turnOf[share]][--count[turnOf[share]]] = share;
      }
    }
    return shares;
  }

  private int[][] turnsByTrack() {
    int[][] turns = new int[board.tracks()][];
    int[] count = new int[board.tracks()];
    board.turns().forEach(turn -> count[turn.track()]++);
    for (int track = 0; track < turns.length; track++) {
      turns[track] = new int[count[track]];
    }
    board.turns().forEach(turn -> turns[turn.track()][turn.order()] = turn.index());
    return turns;
  }

  private void run() {
    int[] next = new int[turnsOf.length];
    long[] free = new long[turnsOf.length];
    boolean progress = true;
    while (progress) {
      progress = false;
      for (int track = 0; track < turnsOf.length; track++) {
        while (next[track] < turnsOf[track].length
            && settle(turnsOf[track][next[track]], free[track])) {
          Turnaround fired = times[turnsOf[track][next[track]]];
          free[track] = fired == null ? free[track] : fired.unpacked();
          next[track]++;
          progress = true;
        }
      }
    }
    for (int turn = 0; turn < settled.length; turn++) {
      if (!settled[turn]) {
        refuse(turn);
      }
    }
  }

  /** Gives a turn its times; false while it is not known when its ware is ready. */
  private boolean settle(int turn, long free) {
    long ready = free;
    int going = 0;
    for (int share : sharesOf[turn]) {
      long at = ready(share);
      if (at == UNKNOWN) {
        return false;
      }
      goes[share] = at >= 0;
      ready = Math.max(ready, at);
      going += at >= 0 ? 1 : 0;
    }
    settled[turn] = true;
    Turn facts = board.turns().get(turn);
    if (board.isHeld(facts)) {
      times[turn] = board.held(facts).times();
      refuseLateComers(turn);
    } else if (going > 0) {
      Optional<Turnaround> fired = board.tables().get(facts.kiln()).next(programOf[turn], ready);
      times[turn] = fired.orElse(null);
      if (fired.isEmpty()) {
        refuse(turn);
      }
    }
    return true;
  }

  /** When a share can go in; −1 when it never can. */
  private long ready(int index) {
    int before = board.table().before(index);
    if (before < 0) {
      return board.table().ready(index);
    }
    if (!goes[before]) {
      return -1;
    }
    Turnaround bisque = times[turnOf[before]];
    return bisque == null
        ? UNKNOWN
        : Math.max(bisque.unpacked() + board.glazing(), board.table().ready(index));
  }

  private void refuseLateComers(int turn) {
    for (int share : sharesOf[turn]) {
      goes[share] = goes[share] && ready(share) <= times[turn].loads();
    }
  }

  private void refuse(int turn) {
    for (int share : sharesOf[turn]) {
      goes[share] = false;
    }
  }

  /** Whether a share gets its firing. */
  boolean goes(Share share) {
    return goes[share.index()];
  }

  /** The turn a share was given, whether or not it goes. */
  int turnOf(Share share) {
    return turnOf[share.index()];
  }

  /** When a turn is fired, or null when it is not. */
  Turnaround times(int turn) {
    return times[turn];
  }

  /** The program a turn was given, or null. */
  KilnProgram program(int turn) {
    return programOf[turn];
  }

  /** The shares given to a turn that its program takes, not to be changed; not all of them go. */
  int[] sharesOf(int turn) {
    return sharesOf[turn];
  }

  Board board() {
    return board;
  }

  /** How many turns there are. */
  int turns() {
    return programOf.length;
  }
}
