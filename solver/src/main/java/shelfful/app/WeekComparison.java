package shelfful.app;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shelfful.cost.WeekCost;
import shelfful.week.Late;
import shelfful.week.Waiting;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/**
 * Two weeks side by side.
 *
 * @param before figures of the one
 * @param after figures of the other
 * @param batches whose lateness or waiting differs, in the order of the second list
 */
public record WeekComparison(Figures before, Figures after, List<Row> batches) {
  /** Takes its own copy. */
  public WeekComparison {
    batches = List.copyOf(batches);
  }

  /**
   * A week in figures.
   *
   * @param firings how many
   * @param latePieces finished after the day they are due
   * @param lateDays the days they are late, summed over pieces
   * @param waiting pieces that miss a firing
   * @param kilowattHours of all firings, where known
   * @param money of all firings, where known
   */
  public record Figures(
      int firings,
      int latePieces,
      long lateDays,
      int waiting,
      OptionalDouble kilowattHours,
      OptionalDouble money) {

    /** Of a week. */
    public static Figures of(WeekPlan plan) {
      WeekCost cost = WeekCost.of(plan);
      return new Figures(
          plan.firings().size(),
          plan.late().stream().mapToInt(Late::pieces).sum(),
          plan.late().stream().mapToLong(late -> (long) late.pieces() * late.days()).sum(),
          plan.waiting().stream().mapToInt(waiting -> waiting.portion().size()).sum(),
          cost.kilowattHours(),
          cost.money());
    }
  }

  /**
   * A batch in both weeks.
   *
   * @param batchId the batch
   * @param before how it fares in the one
   * @param after how it fares in the other
   */
  public record Row(String batchId, Fate before, Fate after) {}

  /**
   * How a batch fares.
   *
   * @param late pieces finished late
   * @param days the most days any of them is late
   * @param waiting pieces that miss a firing
   */
  public record Fate(int late, int days, int waiting) {}

  /** Lays two weeks side by side. */
  public static WeekComparison of(WeekPlan before, WeekPlan after) {
    List<Row> rows = new ArrayList<>();
    for (WareLine line : after.request().lines()) {
      String id = line.batch().id();
      Row row = new Row(id, fate(before, id), fate(after, id));
      if (!row.before().equals(row.after())) {
        rows.add(row);
      }
    }
    return new WeekComparison(Figures.of(before), Figures.of(after), rows);
  }

  private static Fate fate(WeekPlan plan, String batchId) {
    List<Late> late = plan.late().stream().filter(one -> one.batchId().equals(batchId)).toList();
    return new Fate(
        late.stream().mapToInt(Late::pieces).sum(),
        late.stream().mapToInt(Late::days).max().orElse(0),
        plan.waiting().stream()
            .map(Waiting::portion)
            .filter(portion -> portion.batchId().equals(batchId))
            .mapToInt(portion -> portion.size())
            .sum());
  }
}
