package shelfful.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.review.InspectedWeek;
import shelfful.week.WeekEffort;
import shelfful.week.WeekRequest;

/** Options that say how hard to look for a week. */
final class WeekEffortOptions {
  private static final int LOAD_STEPS = 60;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "20",
      description = "How long to plan; the first week is always finished. Default: 20.")
  private int seconds;

  @Option(
      names = "--rounds",
      paramLabel = "N",
      description = "Plan so many rounds instead: the same seed and effort give the same week.")
  private Integer rounds;

  @Option(
      names = "--load-steps",
      paramLabel = "N",
      description = "How many steps each load is searched. Default: 60.")
  private Integer loadSteps;

  @Option(names = "--seed", paramLabel = "N", description = "Default: the file's.")
  private Long seed;

  /** Whether the figures make sense; says so if not. */
  boolean makeSense(PrintStream err) {
    boolean good =
        seconds >= 0
            && seconds <= 86_400
            && (rounds == null || rounds >= 0 && rounds <= 10_000)
            && (loadSteps == null || loadSteps >= 0 && loadSteps <= 100_000);
    if (!good) {
      err.println(
          "--seconds must be from 0 to 86400, --rounds from 0 to 10000, --load-steps from 0 to 100000.");
    }
    return good;
  }

  /** The request with the effort asked for. */
  WeekRequest asked(WeekRequest request) {
    WeekEffort files = request.effort();
    return request.with(
        new WeekEffort(
            seed == null ? files.seed() : seed,
            rounds == null ? files.rounds() : rounds,
            loadSteps == null ? LOAD_STEPS : loadSteps));
  }

  /** Plans as long as asked. */
  Optional<InspectedWeek> run(PlanAWeek planning, WeekListener listener) {
    return rounds == null
        ? planning.run(Duration.ofSeconds(seconds), listener)
        : planning.run(listener);
  }
}
