package shelfful.schedule;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import shelfful.ware.FiringKind;
import shelfful.week.WeekRequest;

/**
 * What is known of the room in the kilns: what each kind of ware takes by estimate, how much of
 * such estimates really goes in, and what was found not to stand in a kiln at all.
 *
 * <p>May be used by several threads.
 */
final class RoomBook {
  /** What goes in before anything is known: two fifths, as measured on the demo month. */
  private static final int FIRST_GUESS = RoomEstimate.WHOLE * 2 / 5;

  /**
   * The same for searched loads, by kind of firing, as measured there: rather too much than too
   * little, for what is never tried is never found to fit.
   */
  private static final Map<FiringKind, Integer> SEARCHED_GUESS =
      Map.of(
          FiringKind.BISQUE, RoomEstimate.WHOLE * 95 / 100,
          FiringKind.GLAZE, RoomEstimate.WHOLE * 63 / 100);

  /** Of a kilnful that must be on offer for a searched load to tell that less goes in. */
  private static final double ENOUGH = 1.15;

  /** How many loads what was learned before counts against the next. */
  private static final int LONG_MEMORY = 3;

  private static final int LEAST = RoomEstimate.WHOLE / 10;
  private static final int MOST = 20 * RoomEstimate.WHOLE;

  private final int[][] usage;
  private final int[][] goesIn;
  private final Set<List<Integer>> refused;
  private final boolean wary;
  private final int memory;

  RoomBook(WeekRequest request, List<UnitKind> kinds) {
    refused = ConcurrentHashMap.newKeySet();
    wary = false;
    memory = 1;
    RoomEstimate estimate = new RoomEstimate(request.studio());
    usage = new int[kinds.size()][request.kilns().size()];
    goesIn = new int[request.kilns().size()][FiringKind.values().length];
    for (int kiln = 0; kiln < request.kilns().size(); kiln++) {
      String id = request.kilns().get(kiln).kilnId();
      for (UnitKind kind : kinds) {
        usage[kind.index()][kiln] = estimate.of(kind, request.studio().kiln(id).orElseThrow());
      }
      Arrays.fill(goesIn[kiln], FIRST_GUESS);
    }
  }

  private RoomBook(RoomBook other) {
    usage = other.usage;
    refused = other.refused;
    wary = true;
    memory = LONG_MEMORY;
    goesIn = new int[other.goesIn.length][FiringKind.values().length];
    for (int[] kinds : goesIn) {
      SEARCHED_GUESS.forEach((kind, guess) -> kinds[kind.ordinal()] = guess);
    }
  }

  /**
   * A book for searched loads, into which more goes than into the first that come: it begins with
   * nothing learned of that, but shares what is refused.
   */
  RoomBook forSearched() {
    return new RoomBook(this);
  }

  /** What a unit takes of a kiln by estimate. */
  int usage(UnitKind kind, int kiln) {
    return usage[kind.index()][kiln];
  }

  /** How much by estimate goes into a firing. */
  synchronized int goesIn(int kiln, FiringKind kind) {
    return goesIn[kiln][kind.ordinal()];
  }

  /**
   * Learns from a load that was really planned.
   *
   * @param offered what might have gone in
   * @param placed what did
   */
  synchronized void learn(KilnProgram program, long offered, long placed, boolean someLeftForRoom) {
    int kind = program.program().kind().ordinal();
    int before = goesIn[program.kiln()][kind];
    if (wary && someLeftForRoom && offered < ENOUGH * before) {
      // The rest of a week may be awkward ware that says nothing of a kilnful with a choice.
      return;
    }
    double seen = Math.min(MOST, Math.max(LEAST, placed));
    goesIn[program.kiln()][kind] =
        someLeftForRoom
            ? (int) Math.round((memory * before + seen) / (memory + 1))
            : (int) Math.max(before, seen);
  }

  void refuse(KilnProgram program, UnitKind kind) {
    refused.add(List.of(program.index(), kind.index()));
  }

  boolean refuses(KilnProgram program, UnitKind kind) {
    return refused.contains(List.of(program.index(), kind.index()));
  }
}
