package shelfful.ui.week;

import java.time.Duration;
import java.util.Optional;
import shelfful.app.WeekRecovery;
import shelfful.review.InspectedWeek;
import shelfful.ui.task.TaskRunner;

/**
 * Keeps an unsaved week for recovery three seconds after a change, and every three seconds while
 * changes go on. Used on the screen's thread alone.
 */
public final class KeptWeek {
  /** Well within the five seconds of work that a kill may cost. */
  private static final Duration KEPT_AFTER = Duration.ofSeconds(3);

  private final TaskRunner tasks;
  private final WeekRecovery recovery;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private boolean soon;
  private boolean dropped;

  /** Follows a week and its file. */
  public KeptWeek(
      TaskRunner tasks, WeekRecovery recovery, WeekViewModel model, WeekFileViewModel files) {
    this.tasks = tasks;
    this.recovery = recovery;
    this.model = model;
    this.files = files;
    model.steps().now().addListener((property, was, is) -> follow());
    files.unsaved().addListener((property, was, is) -> follow());
  }

  private void follow() {
    dropped = false;
    if (!files.unsaved().get()) {
      recovery.forgetOwn();
    } else if (!soon) {
      soon = true;
      tasks.after(KEPT_AFTER, this::keep);
    }
  }

  private void keep() {
    soon = false;
    Optional<InspectedWeek> week = model.week().filter(now -> isWanted());
    if (week.isPresent()) {
      tasks.start(() -> recovery.keep(week.get()), this::kept, model::failed);
    }
  }

  private boolean isWanted() {
    return files.unsaved().get() && !dropped;
  }

  private void kept(Optional<String> trouble) {
    trouble.ifPresent(model::tell);
    if (!isWanted()) {
      recovery.forgetOwn();
    }
  }

  /** Takes up what an earlier run of the program left behind, which is kept as its own first. */
  public void recover(WeekRecovery.Left left) {
    Optional<String> trouble = recovery.keep(left.week());
    files.recover(left.week());
    trouble.ifPresentOrElse(model::tell, () -> recovery.settle(left));
  }

  /** Forgets what is kept, which nobody wants. */
  public void drop() {
    dropped = true;
    recovery.forgetOwn();
  }
}
