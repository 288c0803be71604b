package shelfful.planning;

import java.util.Optional;
import java.util.Set;
import shelfful.ware.Zone;

/** Looks for any height at which a layer for a tall piece lies in an allowed zone. */
final class ZoneSearch {
  private static final int MOST_LEVELS_BELOW = 12;

  private final Stand stand;
  private final StackFitter fitter;

  ZoneSearch(Stand stand) {
    this.stand = stand;
    this.fitter = new StackFitter(stand, stand.cupboard());
  }

  boolean finds(long height, Set<Zone> forbidden) {
    for (Spot spot : stand.spots()) {
      if (!spot.shelves().isEmpty() && finds(spot, height, forbidden)) {
        return true;
      }
    }
    return false;
  }

  private boolean finds(Spot spot, long height, Set<Zone> forbidden) {
    int places = spot.owner().places().size();
    StackNeeds.Level low = new StackNeeds.Level(0, new long[places]);
    StackNeeds needs =
        new StackNeeds(stand.columns())
            .with(spot.column(), 0, new StackNeeds.Level(height, new long[places]));
    for (int below = 0; below < MOST_LEVELS_BELOW; below++) {
      StackNeeds withTop = needs.with(spot.column(), below + 1, low);
      if (isAllowed(needs, spot, below, forbidden) || isAllowed(withTop, spot, below, forbidden)) {
        return true;
      }
      needs = needs.with(spot.column(), 0, low);
    }
    return false;
  }

  private boolean isAllowed(StackNeeds needs, Spot spot, int level, Set<Zone> forbidden) {
    Optional<Stacking> stacking = fitter.fit(needs);
    return stacking
        .map(s -> !forbidden.contains(Zones.of(stand, s.level(spot.column(), level))))
        .orElse(false);
  }
}
