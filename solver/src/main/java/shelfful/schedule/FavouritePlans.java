package shelfful.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which column plan of a kiln the best loads have had, by program: trying every one takes most of
 * the time of a light search. After a few loads only the one that won most is tried, and every few
 * loads all of them again. May be used by several threads.
 */
final class FavouritePlans {
  private static final int FIRST = 2;
  private static final int AGAIN = 6;

  private final Map<Integer, List<String>> winners = new HashMap<>();
  private final Map<Integer, Integer> asked = new HashMap<>();

  /** The column plan to try, or empty to try all. */
  synchronized Optional<String> plan(KilnProgram program) {
    int times = asked.merge(program.index(), 1, Integer::sum);
    List<String> won = winners.getOrDefault(program.index(), List.of());
    if (won.size() < FIRST || times % AGAIN == 0) {
      return Optional.empty();
    }
    Map<String, Integer> counts = new HashMap<>();
    String most = won.get(0);
    for (String plan : won) {
      int count = counts.merge(plan, 1, Integer::sum);
      most = count > counts.getOrDefault(most, 0) ? plan : most;
    }
    return Optional.of(most);
  }

  /** Remembers which plan the best of all had. */
  synchronized void won(KilnProgram program, String planId) {
    winners.computeIfAbsent(program.index(), any -> new ArrayList<>()).add(planId);
  }
}
