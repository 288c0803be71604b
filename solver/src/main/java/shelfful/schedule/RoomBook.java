package shelfful.schedule;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import shelfful.ware.FiringKind;
import shelfful.ware.LidPlace;
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

  /**
   * Of what needs much room against what needs least: were it capped lower, wide plates would count
   * no more than mugs, and wait for the end of every week.
   */
  private static final int MOST_TIMES = 60;

  /** What a unit counts that takes least room, so that small differences show. */
  private static final int UNIT = 4;

  private static final int LEAST = RoomEstimate.WHOLE / 10;
  private static final int MOST = 20 * RoomEstimate.WHOLE;

  private final int[][] usage;
  private final int[][] goesIn;
  private final Set<List<Integer>> refused;
  private final int[] formOf;
  private final Wanted wanted = new Wanted();
  private final Optional<RoomFactors[][]> factors;

  RoomBook(WeekRequest request, List<UnitKind> kinds) {
    refused = ConcurrentHashMap.newKeySet();
    factors = Optional.empty();
    formOf = forms(kinds);
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
    formOf = other.formOf;
    goesIn = new int[other.goesIn.length][FiringKind.values().length];
    RoomFactors[][] learned = new RoomFactors[goesIn.length][FiringKind.values().length];
    for (int kiln = 0; kiln < goesIn.length; kiln++) {
      for (FiringKind kind : FiringKind.values()) {
        int guess = SEARCHED_GUESS.get(kind);
        goesIn[kiln][kind.ordinal()] = guess;
        learned[kiln][kind.ordinal()] = new RoomFactors(forms(), guess);
      }
    }
    factors = Optional.of(learned);
  }

  /** What of a piece tells how much room it takes. */
  private record FormAndLid(String formId, LidPlace lidPlace) {}

  /** Numbers for the kinds: those of the same forms have one. */
  private static int[] forms(List<UnitKind> kinds) {
    Map<List<FormAndLid>, Integer> numbers = new HashMap<>();
    int[] forms = new int[kinds.size()];
    for (UnitKind kind : kinds) {
      List<FormAndLid> parts =
          kind.parts().stream()
              .map(part -> new FormAndLid(part.formId(), part.lidPlace()))
              .toList();
      forms[kind.index()] = numbers.computeIfAbsent(parts, any -> numbers.size());
    }
    return forms;
  }

  private int forms() {
    return Arrays.stream(formOf).max().orElse(0) + 1;
  }

  /**
   * A book for searched loads, into which more goes than into the first that come: it begins with
   * nothing learned of that, but shares what is refused.
   */
  RoomBook forSearched() {
    return new RoomBook(this);
  }

  /** What a unit takes of a kiln by the first estimate, which never changes. */
  int estimate(UnitKind kind, int kiln) {
    return usage[kind.index()][kiln];
  }

  /** What a unit takes of a kiln by estimate, set right by what was learned. */
  synchronized int usage(UnitKind kind, int kiln) {
    int estimate = usage[kind.index()][kiln];
    return factors
        .map(all -> all[kiln][kind.kind().ordinal()].of(formOf[kind.index()]))
        .map(factor -> (int) Math.max(1, Math.round(factor * estimate)))
        .orElse(estimate);
  }

  /** What a piece of a unit takes of a kiln by what was learned, at least 1. */
  int each(UnitKind kind, int kiln) {
    return Math.max(1, usage(kind, kiln) / kind.parts().size());
  }

  /** What a piece of those that take least takes of a kiln; 1 of none. */
  int least(Collection<UnitKind> kinds, int kiln) {
    return kinds.stream().mapToInt(kind -> each(kind, kiln)).min().orElse(1);
  }

  /**
   * What a piece counts in a load: its room, and more where it was left over before.
   *
   * @param least what a piece takes that takes least there
   * @param eagerness how many times its room it is to count beyond that
   */
  int weight(UnitKind kind, int kiln, int least, double eagerness) {
    double times = each(kind, kiln) / (double) least * eagerness;
    return (int) Math.round(UNIT * wanted.times(kind) * Math.min(MOST_TIMES, times));
  }

  /** What is wanted more than its room says. */
  Wanted wanted() {
    return wanted;
  }

  /** How much by estimate goes into a firing. */
  synchronized int goesIn(int kiln, FiringKind kind) {
    return goesIn[kiln][kind.ordinal()];
  }

  /**
   * Learns from a load that was really planned.
   *
   * @param offered what might have gone in
   * @param in units that did, by kind
   */
  synchronized void learn(
      KilnProgram program, long offered, Map<UnitKind, Integer> in, boolean someLeftForRoom) {
    int kind = program.program().kind().ordinal();
    int before = goesIn[program.kiln()][kind];
    long placed = 0;
    for (Map.Entry<UnitKind, Integer> one : in.entrySet()) {
      placed += (long) one.getValue() * usage(one.getKey(), program.kiln());
    }
    double seen = Math.min(MOST, Math.max(LEAST, placed));
    if (!someLeftForRoom) {
      goesIn[program.kiln()][kind] = (int) Math.max(before, seen);
    } else if (factors.isEmpty()) {
      goesIn[program.kiln()][kind] = (int) Math.round((before + seen) / 2);
    } else if (offered >= ENOUGH * before) {
      // The rest of a week may be awkward ware that says nothing of a kilnful with a choice.
      learn(factors.get()[program.kiln()][kind], program, in);
    }
  }

  private void learn(RoomFactors learned, KilnProgram program, Map<UnitKind, Integer> in) {
    double[] estimates = new double[forms()];
    in.forEach(
        (kind, units) ->
            estimates[formOf[kind.index()]] += (double) units * estimate(kind, program.kiln()));
    learned.learn(estimates);
    goesIn[program.kiln()][program.program().kind().ordinal()] =
        (int) Math.min(MOST, Math.max(LEAST, learned.goesIn()));
  }

  void refuse(KilnProgram program, UnitKind kind) {
    refused.add(List.of(program.index(), kind.index()));
  }

  boolean refuses(KilnProgram program, UnitKind kind) {
    return refused.contains(List.of(program.index(), kind.index()));
  }
}
