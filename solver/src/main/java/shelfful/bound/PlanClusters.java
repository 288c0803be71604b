package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;

/** Sorts the columns of a plan into clusters. */
final class PlanClusters {
  private PlanClusters() {}

  static List<Cluster> of(BoundTask task, ColumnPlan plan) {
    List<ColumnLevels> levels = new ArrayList<>();
    for (Column column : plan.columns()) {
      levels.add(new ColumnLevels(task, column));
    }
    List<Cluster> clusters = new ArrayList<>();
    List<ColumnLevels> used = new ArrayList<>();
    for (ColumnLevels own : levels) {
      List<ColumnLevels> uppers = standingOn(own, levels);
      boolean simple = own.column().standsOn().isEmpty() && !uppers.isEmpty() && uppers.size() <= 2;
      for (ColumnLevels upper : uppers) {
        simple &= upper.column().standsOn().size() == 1 && standingOn(upper, levels).isEmpty();
      }
      if (simple) {
        clusters.add(new CarriedColumns(task, own, uppers));
        used.add(own);
        used.addAll(uppers);
      }
    }
    levels.stream().filter(own -> !used.contains(own)).map(LoneColumn::new).forEach(clusters::add);
    return clusters;
  }

  private static List<ColumnLevels> standingOn(ColumnLevels lower, List<ColumnLevels> levels) {
    return levels.stream()
        .filter(other -> other.column().standsOn().contains(lower.column().id()))
        .toList();
  }
}
