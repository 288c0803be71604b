package shelfful.schedule;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shelfful.ware.FiringKind;
import shelfful.week.WeekRequest;

/**
 * What is known of the room in the kilns: what each kind of ware takes by estimate, how much of
 * such estimates really goes in, and what was found not to stand in a kiln at all.
 */
final class RoomBook {
  /** What goes in before anything is known: two fifths, as measured on the demo month. */
  private static final int FIRST_GUESS = RoomEstimate.WHOLE * 2 / 5;

  private static final int LEAST = RoomEstimate.WHOLE / 10;
  private static final int MOST = 20 * RoomEstimate.WHOLE;

  private final int[][] usage;
  private final int[][] goesIn;
  private final Set<List<Integer>> refused = new HashSet<>();

  RoomBook(WeekRequest request, List<UnitKind> kinds) {
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

  /** What a unit takes of a kiln by estimate. */
  int usage(UnitKind kind, int kiln) {
    return usage[kind.index()][kiln];
  }

  /** How much by estimate goes into a firing. */
  int goesIn(int kiln, FiringKind kind) {
    return goesIn[kiln][kind.ordinal()];
  }

  /** Learns from a load that was really planned. */
  void learn(KilnProgram program, long placed, boolean someLeftForRoom) {
    int kind = program.program().kind().ordinal();
    int before = goesIn[program.kiln()][kind];
    double seen = Math.min(MOST, Math.max(LEAST, placed));
    goesIn[program.kiln()][kind] =
        someLeftForRoom ? (int) Math.round((before + seen) / 2) : (int) Math.max(before, seen);
  }

  void refuse(KilnProgram program, UnitKind kind) {
    refused.add(List.of(program.index(), kind.index()));
  }

  boolean refuses(KilnProgram program, UnitKind kind) {
    return refused.contains(List.of(program.index(), kind.index()));
  }
}
