package shelfful.schedule;

import java.util.HashSet;
import java.util.Set;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** Scores an assignment: what breaks a firing, then the goals in their order. */
public final class WeekScorer implements EasyScoreCalculator<WeekSketch, BendableLongScore> {
  private static final int HOUR = 60;
  private static final int TENTHS = 10;

  @Override
  public BendableLongScore calculateScore(WeekSketch sketch) {
    return score(sketch.reckoning());
  }

  static BendableLongScore score(Reckoning reckoning) {
    long[] soft = new long[WeekLevels.COUNT];
    long broken = 0;
    for (int turn = 0; turn < reckoning.turns(); turn++) {
      if (reckoning.times(turn) != null) {
        broken += turn(reckoning, turn, soft);
      }
    }
    for (Share share : reckoning.board().shares()) {
      broken += share(reckoning, share, soft);
    }
    soft[WeekLevels.SPLIT] = -splits(reckoning);
    return BendableLongScore.of(new long[] {-broken}, soft);
  }

  /** Room taken beyond what goes in, and glazes together that must not be. */
  private static long turn(Reckoning reckoning, int turn, long[] soft) {
    Board board = reckoning.board();
    KilnProgram program = reckoning.program(turn);
    long used = 0;
    int going = 0;
    long marks = 0;
    long foes = 0;
    for (int index : reckoning.sharesOf(turn)) {
      Share share = board.shares().get(index);
      if (reckoning.goes(share)) {
        used += share.usage(program.kiln());
        going++;
        marks |= share.marks();
        foes |= share.foes();
      }
    }
    if (!board.isHeld(board.turns().get(turn))) {
      soft[WeekLevels.FIRINGS]--;
    }
    int goesIn = board.goesIn().get(program.index());
    long tenths = Math.min(TENTHS, used * TENTHS / goesIn);
    soft[WeekLevels.FULL] += tenths * tenths;
    // One chunk alone is never too much: the estimate may be wrong, the kiln will tell.
    return (going > 1 ? Math.max(0, used - goesIn) : 0)
        + (long) RoomEstimate.WHOLE * Long.bitCount(marks & foes);
  }

  private static long share(Reckoning reckoning, Share share, long[] soft) {
    Board board = reckoning.board();
    boolean goes = reckoning.goes(share);
    Turnaround times = goes ? reckoning.times(reckoning.turnOf(share)) : null;
    long day = goes ? board.clock().day(times.unpacked()) : board.clock().day(board.clock().end());
    for (Share.DuePieces due : share.due()) {
      boolean counts = goes || due.day() < day;
      long late = Math.max(0, day - due.day()) + (goes ? 0 : 1);
      soft[WeekLevels.LATE] -= counts ? late * due.pieces() : 0;
    }
    if (!goes) {
      soft[WeekLevels.WAITING] -= share.pieces();
    } else {
      soft[WeekLevels.FLOW] -= times.unpacked() / HOUR * share.pieces();
    }
    if (share.earlier().kiln() >= 0 && !staysPut(reckoning, share, times)) {
      soft[WeekLevels.CHANGED] -= share.pieces();
    }
    return missesDeadline(board, share, times) ? RoomEstimate.WHOLE : 0;
  }

  private static boolean staysPut(Reckoning reckoning, Share share, Turnaround times) {
    return times != null
        && reckoning.program(reckoning.turnOf(share)).kiln() == share.earlier().kiln()
        && reckoning.board().clock().day(times.loads()) == share.earlier().day();
  }

  private static boolean missesDeadline(Board board, Share share, Turnaround times) {
    long deadline = share.chunk().deadline();
    return deadline >= 0 && (times == null || times.unpacked() + board.glazing() > deadline);
  }

  private static long splits(Reckoning reckoning) {
    if (reckoning.board().orders() == 0) {
      return 0;
    }
    Set<Long> places = new HashSet<>();
    Set<Long> orders = new HashSet<>();
    long turns = reckoning.turns() + 1L;
    for (Share share : reckoning.board().shares()) {
      if (share.order() >= 0) {
        long order = share.order() * 2L + share.kind().ordinal();
        int turn = reckoning.goes(share) ? reckoning.turnOf(share) : reckoning.turns();
        orders.add(order);
        places.add(order * turns + turn);
      }
    }
    return places.size() - orders.size();
  }
}
