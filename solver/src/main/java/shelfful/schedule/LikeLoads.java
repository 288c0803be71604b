package shelfful.schedule;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * The last loads of every program, so that the next one of much the same ware begins from the one
 * most like it and ends fuller. May be used by several threads.
 */
final class LikeLoads {
  private static final int REMEMBERED = 40;

  /** So many of a load's pieces must be asked for for it to be a good beginning. */
  private static final double ENOUGH = 0.5;

  private static final String GONE = "gone ";

  private final Map<Integer, Deque<LoadAnswer>> loads = new HashMap<>();

  /** Remembers a load. */
  synchronized void add(KilnProgram program, LoadAnswer answer) {
    Deque<LoadAnswer> known = loads.computeIfAbsent(program.index(), any -> new ArrayDeque<>());
    known.addFirst(answer);
    if (known.size() > REMEMBERED) {
      known.removeLast();
    }
  }

  /**
   * The load of a program that holds most of what is asked for, its pieces named as they are asked
   * for; what is not asked for any more has a name that nobody knows.
   *
   * @param request how the ware is asked for
   */
  synchronized Optional<Load> like(KilnProgram program, List<Asked> asked, LoadRequest request) {
    LoadAnswer best = null;
    long most = 0;
    for (LoadAnswer answer : loads.getOrDefault(program.index(), new ArrayDeque<>())) {
      String plan = answer.load().columnPlanId();
      long shared =
          request.columnPlanId().map(plan::equals).orElse(true)
              ? shared(answer, asked, Asked::weight)
              : 0;
      if (shared > most) {
        best = answer;
        most = shared;
      }
    }
    return Optional.ofNullable(best)
        .filter(answer -> isMuchTheSame(answer, asked))
        .map(answer -> renamed(answer, asked, request));
  }

  /** What a load has of what is asked for, each unit counted for so much. */
  private static long shared(LoadAnswer answer, List<Asked> asked, ToIntFunction<Asked> each) {
    return asked.stream()
        .mapToLong(
            one -> (long) each.applyAsInt(one) * Math.min(one.units(), answer.count(one.kind())))
        .sum();
  }

  private static boolean isMuchTheSame(LoadAnswer answer, List<Asked> asked) {
    int units = answer.placed().values().stream().mapToInt(List::size).sum();
    return shared(answer, asked, one -> 1) >= ENOUGH * units;
  }

  private static Load renamed(LoadAnswer answer, List<Asked> asked, LoadRequest request) {
    Map<String, String> names = new HashMap<>();
    for (Asked one : asked) {
      List<List<String>> wanted = LoadBook.unitNames(one);
      List<LoadAnswer.PlacedUnit> standing = answer.placed().getOrDefault(one.kind(), List.of());
      for (int unit = 0; unit < Math.min(wanted.size(), standing.size()); unit++) {
        List<String> parts = standing.get(unit).pieceIds();
        for (int part = 0; part < parts.size(); part++) {
          names.put(parts.get(part), wanted.get(unit).get(part));
        }
      }
    }
    Load load = answer.load();
    List<Layer> layers = Renaming.layers(load, id -> names.getOrDefault(id, GONE + id));
    return new Load(request, load.columnPlanId(), layers, load.posts(), List.of());
  }
}
