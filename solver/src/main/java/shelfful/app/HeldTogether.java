package shelfful.app;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shelfful.ware.FiringKind;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * A glaze firing can only stay as it is when its ware is bisqued in time: the bisque firings it
 * comes from stay with it, or it does not stay.
 */
final class HeldTogether {
  private HeldTogether() {}

  private record Piece(String batchId, int number) {}

  /** The bisque firings of a week that the ware of a glaze firing comes from. */
  static List<PlannedFiring> sources(WeekPlan plan, PlannedFiring firing) {
    if (kind(plan.request(), firing) == FiringKind.BISQUE) {
      return List.of();
    }
    Set<Piece> wanted = pieces(firing);
    List<PlannedFiring> sources = new ArrayList<>();
    for (PlannedFiring other : plan.firings()) {
      boolean bisque = kind(plan.request(), other) == FiringKind.BISQUE;
      if (bisque && pieces(other).stream().anyMatch(wanted::contains)) {
        sources.add(other);
      }
    }
    return sources;
  }

  /**
   * Those of the held firings whose bisque firings are frozen too, where they need any, and end
   * early enough for the pause for glazing.
   */
  static List<PlannedFiring> withTheirSources(WeekRequest request, List<PlannedFiring> held) {
    Map<Piece, LocalDateTime> ready = new HashMap<>();
    for (PlannedFiring firing : held) {
      if (firing.hold() == Hold.ALL && kind(request, firing) == FiringKind.BISQUE) {
        LocalDateTime glazed = firing.times().unpacked().plusDays(request.pauses().glazingDays());
        pieces(firing).forEach(piece -> ready.put(piece, glazed));
      }
    }
    return held.stream()
        .filter(
            firing ->
                firing.hold() != Hold.ALL
                    || kind(request, firing) == FiringKind.BISQUE
                    || pieces(firing).stream()
                        .filter(piece -> needsBisque(request, piece))
                        .allMatch(piece -> isReadyFor(ready.get(piece), firing)))
        .toList();
  }

  private static boolean isReadyFor(LocalDateTime ready, PlannedFiring firing) {
    return ready != null && !ready.isAfter(firing.times().loads());
  }

  private static boolean needsBisque(WeekRequest request, Piece piece) {
    return request
        .line(piece.batchId())
        .filter(line -> line.needs().contains(FiringKind.BISQUE))
        .isPresent();
  }

  private static FiringKind kind(WeekRequest request, PlannedFiring firing) {
    return request.program(firing).orElseThrow().kind();
  }

  private static Set<Piece> pieces(PlannedFiring firing) {
    Set<Piece> pieces = new HashSet<>();
    for (Portion portion : firing.portions()) {
      portion.numbers().forEach(number -> pieces.add(new Piece(portion.batchId(), number)));
    }
    return pieces;
  }
}
