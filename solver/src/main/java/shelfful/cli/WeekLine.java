package shelfful.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import shelfful.app.WeekComparison;
import shelfful.app.WeekListener;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.week.WeekPlan;

/** Tells how the planning of a week goes, a plain line for each better one. */
final class WeekLine implements WeekListener {
  /** What is said when every week was refused. */
  static final String NONE_PASSED = "No week passed the judge.";

  private final PrintStream err;
  private final boolean quiet;
  private final long begun = System.nanoTime();
  private String said = "";

  WeekLine(PrintStream err, boolean quiet) {
    this.err = err;
    this.quiet = quiet;
  }

  @Override
  public void better(InspectedWeek week) {
    WeekComparison.Figures figures = WeekComparison.Figures.of(week.plan());
    String words =
        String.format(
            Locale.ROOT,
            "%d firings, %d pieces late by %d days in all, %d waiting",
            figures.firings(),
            figures.latePieces(),
            figures.lateDays(),
            figures.waiting());
    if (!quiet && !words.equals(said)) {
      said = words;
      double seconds = (System.nanoTime() - begun) / 1e9;
      err.println(String.format(Locale.ROOT, "%5.1f s  %s", seconds, words));
    }
  }

  @Override
  public void refused(WeekPlan plan, List<WeekFinding> findings) {
    err.println("The judge refused a week; it was dropped. This is a fault of the program.");
    findings.stream().limit(20).forEach(f -> err.println("  " + f.rule() + ": " + f.sentence()));
  }
}
