package shelfful.ui.week;

import java.util.Comparator;
import shelfful.app.WeekComparison.Figures;
import shelfful.review.InspectedWeek;

/**
 * Which of two weeks is shown: fewer pieces that wait, then fewer days late, then fewer firings.
 */
final class WeekRank {
  private static final Comparator<Figures> WORSE_LAST =
      Comparator.comparingInt(Figures::waiting)
          .thenComparingLong(Figures::lateDays)
          .thenComparingInt(Figures::firings);

  private WeekRank() {}

  /** Whether a week may take the place of another. */
  static boolean isNoWorse(InspectedWeek week, InspectedWeek than) {
    return WORSE_LAST.compare(Figures.of(week.plan()), Figures.of(than.plan())) <= 0;
  }
}
