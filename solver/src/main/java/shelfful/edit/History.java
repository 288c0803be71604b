package shelfful.edit;

import java.util.Optional;

/**
 * A plan with everything that was done to it: each step can be undone and done again, exactly,
 * because every plan on the way is kept. Immutable.
 */
public final class History {
  private final WorkPlan now;
  private final Trail past;
  private final Trail future;

  private History(WorkPlan now, Trail past, Trail future) {
    this.now = now;
    this.past = past;
    this.future = future;
  }

  /** A chain, so that a step costs the same however many there were before. */
  private static final class Trail {
    private final Edit edit;
    private final WorkPlan beyond;
    private final Trail rest;

    private Trail(Edit edit, WorkPlan beyond, Trail rest) {
      this.edit = edit;
      this.beyond = beyond;
      this.rest = rest;
    }
  }

  /** Begins with a plan to which nothing was done yet. */
  public static History of(WorkPlan plan) {
    return new History(plan, null, null);
  }

  /** The plan as it is. */
  public WorkPlan now() {
    return now;
  }

  /**
   * One more step; what was undone before can no longer be done again.
   *
   * @throws IllegalArgumentException when the edit does not fit the plan
   */
  public History done(Edit edit) {
    return new History(edit.on(now), new Trail(edit, now, past), null);
  }

  /** One step back; the same history where there is none. */
  public History undone() {
    return past == null
        ? this
        : new History(past.beyond, past.rest, new Trail(past.edit, now, future));
  }

  /** One step forth again; the same history where there is none. */
  public History redone() {
    return future == null
        ? this
        : new History(future.beyond, new Trail(future.edit, now, past), future.rest);
  }

  /** What would be undone. */
  public Optional<Edit> lastDone() {
    return Optional.ofNullable(past).map(trail -> trail.edit);
  }

  /** What would be done again. */
  public Optional<Edit> lastUndone() {
    return Optional.ofNullable(future).map(trail -> trail.edit);
  }
}
