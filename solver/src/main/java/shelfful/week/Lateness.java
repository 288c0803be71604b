package shelfful.week;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** What is finished after the day it is due, and in which firing. */
public final class Lateness {
  private Lateness() {}

  /** All that is late, in the order of the list and then of the days. */
  public static List<Late> of(WeekRequest request, List<PlannedFiring> firings) {
    List<Late> all = new ArrayList<>();
    for (WareLine line : request.lines()) {
      TreeMap<Integer, Integer> pieces = new TreeMap<>();
      for (PlannedFiring firing : firings) {
        int days = days(request, line, firing);
        for (Portion portion : firing.portions()) {
          if (days > 0 && portion.batchId().equals(line.batch().id())) {
            pieces.merge(days, portion.size(), Integer::sum);
          }
        }
      }
      pieces.forEach((days, count) -> all.add(new Late(line.batch().id(), count, days)));
    }
    return all;
  }

  /**
   * By how many days ware of a line is finished late in a firing; 0 where it is in time, has no day
   * due, or is not finished in it.
   */
  public static int days(WeekRequest request, WareLine line, PlannedFiring firing) {
    Program program = request.program(firing).orElseThrow();
    return line.isFinishedBy(program.kind())
        ? line.batch()
            .due()
            .map(due -> due.until(firing.times().unpacked().toLocalDate(), ChronoUnit.DAYS))
            .map(days -> (int) Math.max(0, days))
            .orElse(0)
        : 0;
  }
}
