package shelfful.app;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import shelfful.week.Lateness;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/**
 * One firing of a week in figures.
 *
 * @param pieces that go in, lids not counted
 * @param cover the share of its shelves' area that the widest outlines of its ware cover, from 0 to
 *     1 or a little more where rims stand out over a shelf; empty when nothing goes in
 * @param orders whose ware is in it, in the order of their names
 * @param latePieces that are finished in it after the day they are due
 * @param mostDaysLate of any of them; 0 when none is late
 */
public record PlannedFiringFigures(
    int pieces, OptionalDouble cover, List<String> orders, int latePieces, int mostDaysLate) {
  /** Takes its own copy. */
  public PlannedFiringFigures {
    orders = List.copyOf(orders);
  }

  /** Of a firing of a week. */
  public static PlannedFiringFigures of(WeekPlan plan, PlannedFiring firing) {
    TreeSet<String> orders = new TreeSet<>();
    int pieces = 0;
    int most = 0;
    for (Portion portion : firing.portions()) {
      WareLine line = plan.request().line(portion.batchId()).orElseThrow();
      line.batch().order().ifPresent(orders::add);
      int days = Lateness.days(plan.request(), line, firing);
      pieces += days > 0 ? portion.size() : 0;
      most = Math.max(most, days);
    }
    return new PlannedFiringFigures(
        firing.pieces(),
        firing.load().map(ShelfCover::of).orElse(OptionalDouble.empty()),
        List.copyOf(orders),
        pieces,
        most);
  }
}
