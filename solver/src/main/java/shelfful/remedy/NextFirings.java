package shelfful.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import shelfful.app.PlanALoad;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.RequestChange;
import shelfful.ware.Batch;
import shelfful.ware.BatchChange;
import shelfful.ware.Piece;
import shelfful.ware.Stage;

/**
 * The firings that what waits could go into, each planned once with everything that would be ready
 * for it, and once more with a group alone where the room went to others again.
 */
final class NextFirings {
  /** A firing with all that waits is planned once for many groups, so it is searched longer. */
  private static final int TOGETHER = 5;

  private final Load load;
  private final List<WaitingGroup> groups;
  private final RemedyEffort effort;
  private final Runs runs;
  private final Map<Firing, Optional<InspectedLoad>> planned = new HashMap<>();

  NextFirings(Load load, List<WaitingGroup> groups, RemedyEffort effort, Runs runs) {
    this.load = load;
    this.groups = groups;
    this.effort = effort;
    this.runs = runs;
  }

  /** The firing with all that waits and would be ready for it. */
  Optional<InspectedLoad> together(Firing firing) {
    if (!planned.containsKey(firing)) {
      LaterFiring later = new LaterFiring(load.request());
      List<WaitingGroup> all =
          groups.stream().filter(group -> later.of(group).contains(firing)).toList();
      planned.put(firing, plan(firing, waiting(all), Set.of()));
    }
    return planned.get(firing);
  }

  /** The firing with a group, and what only goes with it, and nothing else. */
  Optional<InspectedLoad> alone(Firing firing, WaitingCase one) {
    List<WaitingGroup> mates =
        groups.stream()
            .filter(group -> group.pieceIds().stream().anyMatch(one.mates()::contains))
            .toList();
    return plan(firing, waiting(mates), one.first());
  }

  /** The pieces of some groups as a list of their own: so many of each batch, ready to go in. */
  private List<Batch> waiting(List<WaitingGroup> some) {
    Set<String> ids =
        some.stream().flatMap(group -> group.pieceIds().stream()).collect(Collectors.toSet());
    Map<Batch, Set<Integer>> numbers = new LinkedHashMap<>();
    for (Piece piece : load.request().pieces()) {
      if (ids.contains(piece.id())) {
        numbers.computeIfAbsent(piece.batch(), fresh -> new TreeSet<>()).add(piece.number());
      }
    }
    List<Batch> batches = new ArrayList<>();
    numbers.forEach(
        (batch, those) -> batches.add(BatchChange.pieces(batch, those.size(), batch.stage())));
    return batches;
  }

  private Optional<InspectedLoad> plan(Firing firing, List<Batch> batches, Set<String> first) {
    Stage ready = firing.kind().goesIn();
    List<Batch> asked =
        batches.stream()
            .map(batch -> BatchChange.pieces(batch, batch.quantity(), ready))
            .map(batch -> first.contains(batch.id()) ? BatchChange.mustGo(batch, true) : batch)
            .toList();
    LoadRequest request = RequestChange.firing(load.request(), firing, asked);
    return runs.run(new PlanALoad(request), effort.steps() * (first.isEmpty() ? TOGETHER : 1));
  }
}
