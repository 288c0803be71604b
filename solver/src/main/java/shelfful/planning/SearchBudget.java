package shelfful.planning;

import java.util.function.LongSupplier;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** How long a search may go on: in steps, which is repeatable, or until a time. */
public final class SearchBudget {
  private final long steps;
  private final LongSupplier clock;
  private final long millis;
  private final long until;

  private SearchBudget(long steps, LongSupplier clock, long millis) {
    this.steps = steps;
    this.clock = clock;
    this.millis = millis;
    this.until = clock.getAsLong() + millis;
  }

  /** So many steps of the search; 0 gives the first load only. */
  public static SearchBudget ofSteps(long steps) {
    return new SearchBudget(steps, () -> 0, 0);
  }

  /**
   * Until so many milliseconds from now.
   *
   * @param clock in milliseconds, only ever growing
   */
  public static SearchBudget ofMillis(long millis, LongSupplier clock) {
    return new SearchBudget(-1, clock, millis);
  }

  boolean isInSteps() {
    return steps >= 0;
  }

  boolean isSpent() {
    return isInSteps() ? steps == 0 : millisLeft() <= 0;
  }

  private long millisLeft() {
    return until - clock.getAsLong();
  }

  /** Whether so much time or more is left; of a budget in steps nobody knows. */
  boolean lasts(long atLeastMillis) {
    return !isInSteps() && millisLeft() >= atLeastMillis;
  }

  /** A share of what is left of it now. */
  SearchBudget share(double share) {
    return isInSteps()
        ? ofSteps(Math.round(steps * share))
        : ofMillis(Math.round(Math.max(0, millisLeft()) * share), clock);
  }

  /** What is left of it now, but no longer than so many milliseconds; steps stay as many. */
  SearchBudget atMost(long most) {
    return isInSteps() ? this : ofMillis(Math.min(most, Math.max(0, millisLeft())), clock);
  }

  /** So much again, a time from now on. */
  SearchBudget anew() {
    return new SearchBudget(steps, clock, millis);
  }

  /** What is left when a share of the steps is spent; a time runs by itself. */
  SearchBudget without(SearchBudget spent) {
    return isInSteps() ? ofSteps(Math.max(0, steps - spent.steps)) : this;
  }

  TerminationConfig termination() {
    TerminationConfig config = new TerminationConfig();
    return isInSteps()
        ? config.withScoreCalculationCountLimit(steps)
        : config.withMillisecondsSpentLimit(Math.max(1, millisLeft()));
  }
}
