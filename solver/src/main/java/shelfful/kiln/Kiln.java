package shelfful.kiln;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Cone;

/**
 * A kiln.
 *
 * @param id unique within a studio
 * @param name as the potter says it
 * @param loading from the top or the front
 * @param chamber its inside
 * @param hottest the hottest cone its maker allows; empty when unknown
 * @param keepOuts parts of the chamber to stay clear of
 * @param columnPlans ways of standing columns in it; at least one
 */
public record Kiln(
    String id,
    String name,
    Loading loading,
    Chamber chamber,
    Optional<Cone> hottest,
    List<KeepOut> keepOuts,
    List<ColumnPlan> columnPlans) {
  /** Takes its own copies and refuses a kiln without a column plan. */
  public Kiln {
    keepOuts = List.copyOf(keepOuts);
    columnPlans = List.copyOf(columnPlans);
    if (columnPlans.isEmpty()) {
      throw new IllegalArgumentException("The kiln " + id + " needs at least one column plan");
    }
  }

  /** The same kiln with other ways of standing columns in it. */
  public Kiln with(List<ColumnPlan> plans) {
    return new Kiln(id, name, loading, chamber, hottest, keepOuts, plans);
  }
}
