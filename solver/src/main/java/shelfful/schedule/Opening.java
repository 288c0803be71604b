package shelfful.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import shelfful.ware.FiringKind;

/**
 * A sketch without search: the kiln that is free first takes the firing that fills its time best,
 * ware that is due soon counting more, until nothing more can be fired. What each turn fires may be
 * given; then only what goes in is chosen.
 */
final class Opening {
  private static final int MOMENTS = 4;
  private static final int URGENT = 4;
  private static final long URGENT_DAYS = 2;
  private static final long DAYS_AFTER_BISQUE = 4;

  private final Board board;
  private final ShareTable table;
  private final KilnProgram[] given;
  private final int[] turnOf;
  private final KilnProgram[] programOf;
  private final long[] done;
  private final long[] free;
  private final int[] order;
  private final int[] turns;
  private final int[] firstTurn;
  private final boolean[] idle;

  private Opening(Board board, KilnProgram[] given) {
    this.board = board;
    this.table = board.table();
    this.given = given;
    this.turnOf = new int[board.shares().size()];
    this.programOf = new KilnProgram[board.turns().size()];
    this.done = new long[board.shares().size()];
    int kilns = board.tables().size();
    this.free = new long[kilns];
    this.order = new int[kilns];
    this.turns = new int[kilns];
    this.firstTurn = new int[kilns];
    this.idle = new boolean[kilns];
    for (Turn turn : board.turns()) {
      if (!board.isHeld(turn)) {
        turns[turn.track()]++;
        firstTurn[turn.track()] = turn.index() - turn.order();
      }
    }
    Arrays.fill(turnOf, -1);
    Arrays.fill(done, -1);
  }

  /** A firing that could come next. */
  private record Offer(KilnProgram program, Turnaround times, List<Share> shares, double worth) {}

  /** A sketch of its own. */
  static WeekSketch sketch(Board board) {
    return new Opening(board, null).filled().asSketch();
  }

  /** What goes into which turn, −1 for none, when each turn fires what is given, or nothing. */
  static int[] turnsFor(Board board, KilnProgram[] given) {
    return new Opening(board, given).filled().turnOf;
  }

  private Opening filled() {
    int kiln = nextKiln();
    while (kiln >= 0) {
      Optional<Offer> best = bestOffer(kiln);
      if (best.isPresent()) {
        take(kiln, best.get());
        Arrays.fill(idle, false);
      } else {
        idle[kiln] = true;
      }
      kiln = nextKiln();
      if (kiln < 0 && given != null) {
        kiln = passOver();
      }
    }
    return this;
  }

  private int nextKiln() {
    int best = -1;
    for (int kiln = 0; kiln < free.length; kiln++) {
      skipEmpty(kiln);
      boolean open = !idle[kiln] && order[kiln] < turns[kiln];
      if (open && (best < 0 || free[kiln] < free[best])) {
        best = kiln;
      }
    }
    return best;
  }

  private void skipEmpty(int kiln) {
    while (given != null && order[kiln] < turns[kiln] && given[turn(kiln)] == null) {
      order[kiln]++;
    }
  }

  /** Every kiln waits for ware that never comes: the first of them gives its turn up. */
  private int passOver() {
    for (int kiln = 0; kiln < free.length; kiln++) {
      if (order[kiln] < turns[kiln]) {
        order[kiln]++;
        Arrays.fill(idle, false);
        return nextKiln();
      }
    }
    return -1;
  }

  private int turn(int kiln) {
    return firstTurn[kiln] + order[kiln];
  }

  private Optional<Offer> bestOffer(int kiln) {
    Offer best = null;
    for (KilnProgram program : board.programs()) {
      boolean wanted = given == null || given[turn(kiln)] == program;
      if (program.kiln() == kiln && wanted) {
        long moment = moment(program, free[kiln]);
        for (int i = 0; i < MOMENTS && moment >= 0; i++) {
          Offer offer = offer(program, moment);
          if (offer != null && (best == null || offer.worth() > best.worth())) {
            best = offer;
          }
          moment = offer == null ? -1 : moment(program, offer.times().loads() + 1);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** When it could be loaded: at once if any of its ware is ready, else when more of it is. */
  private long moment(KilnProgram program, long from) {
    long next = -1;
    for (int share : table.byWanted(program)) {
      if (turnOf[share] < 0) {
        long ready = ready(share);
        if (from == free[program.kiln()] && ready >= 0 && ready <= from) {
          return from;
        }
        if (ready >= from && (next < 0 || ready < next)) {
          next = ready;
        }
      }
    }
    return next;
  }

  private long ready(int share) {
    int before = table.before(share);
    if (before < 0) {
      return table.ready(share);
    }
    return done[before] < 0 ? -1 : Math.max(done[before] + board.glazing(), table.ready(share));
  }

  private Offer offer(KilnProgram program, long moment) {
    Optional<Turnaround> times = board.tables().get(program.kiln()).next(program, moment);
    if (times.isEmpty()) {
      return null;
    }
    List<Share> taken = new ArrayList<>();
    long used = 0;
    double worth = 0;
    long marks = 0;
    long foes = 0;
    long loads = times.get().loads();
    long urgent = lastUrgentDay(program, times.get());
    int goesIn = board.goesIn().get(program.index());
    for (int index : table.byWanted(program)) {
      int usage = table.usage(index, program.kiln());
      if (turnOf[index] >= 0 || used + usage > goesIn) {
        continue;
      }
      long ready = ready(index);
      Share share = board.shares().get(index);
      boolean apart = ((marks | share.marks()) & (foes | share.foes())) != 0;
      if (ready >= 0 && ready <= loads && !apart) {
        taken.add(share);
        used += usage;
        marks |= share.marks();
        foes |= share.foes();
        worth += (double) usage * (table.wanted(index) <= urgent ? URGENT : 1);
      }
    }
    long takes = times.get().unpacked() - free[program.kiln()];
    return taken.isEmpty() ? null : new Offer(program, times.get(), taken, worth / takes);
  }

  private long lastUrgentDay(KilnProgram program, Turnaround times) {
    boolean bisque = program.program().kind() == FiringKind.BISQUE;
    return board.clock().day(times.unpacked()) + URGENT_DAYS + (bisque ? DAYS_AFTER_BISQUE : 0);
  }

  private void take(int kiln, Offer offer) {
    int turn = turn(kiln);
    programOf[turn] = offer.program();
    for (Share share : offer.shares()) {
      turnOf[share.index()] = turn;
      done[share.index()] = offer.times().unpacked();
    }
    free[kiln] = offer.times().unpacked();
    order[kiln]++;
  }

  private WeekSketch asSketch() {
    return WeekSketch.of(board, turnOf, programOf);
  }
}
