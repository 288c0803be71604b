package shelfful.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/**
 * Plans loads and keeps every answer: the same ware asked of the same program with the same effort
 * is the same load, so a firing that did not change is not planned again.
 */
final class LoadBook {
  private static final int MOST_OF_A_KIND = Batch.MOST_PIECES;

  private final Studio studio;
  private final LoadSource source;
  private final long seed;
  private final Map<Question, Optional<LoadAnswer>> answers = new HashMap<>();

  private record Question(int program, List<Asked> asked, int steps) {}

  LoadBook(Studio studio, LoadSource source, long seed) {
    this.studio = studio;
    this.source = source;
    this.seed = seed;
  }

  /**
   * The load, or empty when the judge refused it.
   *
   * @param asked in the order of the kinds
   */
  Optional<LoadAnswer> load(KilnProgram program, List<Asked> asked, int steps) {
    Question question = new Question(program.index(), asked, steps);
    Optional<LoadAnswer> known = answers.get(question);
    if (known == null) {
      known = plan(program, asked, steps);
      answers.put(question, known);
    }
    return known;
  }

  private Optional<LoadAnswer> plan(KilnProgram program, List<Asked> asked, int steps) {
    List<Batch> batches = new ArrayList<>();
    for (Asked one : asked) {
      batches.addAll(batches(one.kind(), one.must(), true));
      batches.addAll(batches(one.kind(), one.may(), false));
    }
    LoadRequest request =
        new LoadRequest(
            studio,
            batches,
            program.program().in(program.kilnId()),
            Optional.empty(),
            Optional.empty(),
            seed,
            steps);
    return source.plan(request).map(InspectedLoad::load).map(load -> answer(load, asked));
  }

  private static List<Batch> batches(UnitKind kind, int units, boolean must) {
    List<Batch> batches = new ArrayList<>();
    for (int part = 0; part < kind.parts().size() && units > 0; part++) {
      Optional<String> set =
          kind.parts().size() > 1 ? Optional.of(name(kind, 0, must)) : Optional.empty();
      int quantity = Math.min(units, MOST_OF_A_KIND);
      batches.add(
          kind.parts().get(part).batch(name(kind, part, must), quantity, kind.kind(), set, must));
    }
    return batches;
  }

  private static String name(UnitKind kind, int part, boolean must) {
    return "K" + kind.index() + "." + part + (must ? "" : "+");
  }

  private LoadAnswer answer(Load load, List<Asked> asked) {
    Set<String> standing = new HashSet<>();
    load.layers().forEach(l -> l.placements().forEach(p -> standing.add(p.pieceId())));
    Map<UnitKind, List<LoadAnswer.PlacedUnit>> placed = new HashMap<>();
    Map<String, UnitKind> kinds = new HashMap<>();
    for (Asked one : asked) {
      List<LoadAnswer.PlacedUnit> units = new ArrayList<>();
      place(one.kind(), one.must(), true, standing, units);
      place(one.kind(), one.may(), false, standing, units);
      placed.put(one.kind(), units);
      kinds.put("K" + one.kind().index(), one.kind());
    }
    Set<UnitKind> refused = new HashSet<>();
    boolean room = false;
    for (LeftOut out : load.leftOut()) {
      if (isForRoom(out.reason())) {
        room = true;
      } else {
        refused.add(kinds.get(out.pieceId().substring(0, out.pieceId().indexOf('.'))));
      }
    }
    return new LoadAnswer(load, placed, refused, room);
  }

  private static boolean isForRoom(LeftOut.Reason reason) {
    return switch (reason) {
      case NO_ROOM, SET_WAITS, KEPT_APART, TAKEN_OUT -> true;
      default -> false;
    };
  }

  private static void place(
      UnitKind kind,
      int asked,
      boolean must,
      Set<String> standing,
      List<LoadAnswer.PlacedUnit> units) {
    for (int number = 1; number <= Math.min(asked, MOST_OF_A_KIND); number++) {
      List<String> ids = new ArrayList<>();
      for (int part = 0; part < kind.parts().size(); part++) {
        ids.add(String.format(Locale.ROOT, "%s-%03d", name(kind, part, must), number));
      }
      if (standing.containsAll(ids)) {
        units.add(new LoadAnswer.PlacedUnit(ids));
      }
    }
  }
}
