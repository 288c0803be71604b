package shelfful.ui.work;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import shelfful.app.RecoveryFolder;
import shelfful.app.WorkFile;
import shelfful.edit.Edit;
import shelfful.edit.History;
import shelfful.edit.WorkPlan;
import shelfful.ui.steps.Steps;
import shelfful.ui.task.TaskRunner;

/**
 * The plan on the desk with its history and its file. Unsaved work is kept in the recovery folder
 * three seconds after a change, and every three seconds while changes go on. Used on the screen's
 * thread alone.
 */
public final class WorkViewModel {
  /** Well within the five seconds of work that a kill may cost. */
  private static final Duration KEPT_AFTER = Duration.ofSeconds(3);

  private final Steps steps;
  private final Function<Edit, String> names;
  private final TaskRunner tasks;
  private final RecoveryFolder recovery;
  private final ReadOnlyObjectWrapper<Optional<WorkPlan>> plan =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Edit>> lastDone =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Edit>> lastUndone =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
  private Optional<History> history = Optional.empty();
  private Optional<WorkPlan> saved = Optional.empty();
  private Optional<WorkFile> file = Optional.empty();
  private boolean keepingSoon;
  private boolean dropped;
  private Consumer<String> onTrouble = sentence -> {};

  /**
   * Nothing is on the desk yet.
   *
   * @param steps of the whole desk, among which what is done to the plan is noted
   * @param names what a step is called
   */
  public WorkViewModel(
      TaskRunner tasks, RecoveryFolder recovery, Steps steps, Function<Edit, String> names) {
    this.steps = steps;
    this.names = names;
    this.tasks = tasks;
    this.recovery = recovery;
  }

  /** The plan as it is now; empty before the first. */
  public ReadOnlyObjectProperty<Optional<WorkPlan>> plan() {
    return plan.getReadOnlyProperty();
  }

  /** Everything done at the desk, what was done to the plan among it. */
  public Steps steps() {
    return steps;
  }

  /** What would be undone of the plan. */
  public ReadOnlyObjectProperty<Optional<Edit>> lastDone() {
    return lastDone.getReadOnlyProperty();
  }

  /** What would be done again to the plan. */
  public ReadOnlyObjectProperty<Optional<Edit>> lastUndone() {
    return lastUndone.getReadOnlyProperty();
  }

  /** Whether there is something that no file holds. */
  public ReadOnlyBooleanProperty unsaved() {
    return unsaved.getReadOnlyProperty();
  }

  /** Who is told, in a sentence, when unsaved work cannot be kept. */
  public void onTrouble(Consumer<String> taker) {
    onTrouble = taker;
  }

  /** The file it is saved in, if any. */
  public Optional<WorkFile> file() {
    return file;
  }

  /**
   * Another plan comes onto the desk, and no file holds it yet; what was done to the one before can
   * no longer be undone.
   *
   * @param of the file it is to be saved in, if that is known
   */
  public void begin(WorkPlan first, Optional<WorkFile> of) {
    begin(first, Optional.empty(), of);
  }

  /** The same for a plan just as a file holds it. */
  public void beginSaved(WorkPlan first, Optional<WorkFile> of) {
    begin(first, Optional.of(first), of);
  }

  private void begin(WorkPlan first, Optional<WorkPlan> kept, Optional<WorkFile> of) {
    steps.forget(this);
    file = of;
    saved = kept;
    now(History.of(first));
  }

  /** Shows the plan again, after something else was looked at. */
  public void showAgain() {
    Optional<WorkPlan> same = plan.get();
    plan.set(Optional.empty());
    plan.set(same);
  }

  /** Does something to the plan; false when it does not fit. */
  public boolean apply(Edit edit) {
    boolean fits = history.filter(one -> edit.fits(one.now())).isPresent();
    if (fits) {
      now(history.orElseThrow().done(edit));
      steps.note(new Steps.Step(this, names.apply(edit), this::back, this::forth));
    }
    return fits;
  }

  private void back() {
    history.ifPresent(one -> now(one.undone()));
  }

  private void forth() {
    history.ifPresent(one -> now(one.redone()));
  }

  private void now(History next) {
    history = Optional.of(next);
    dropped = false;
    lastDone.set(next.lastDone());
    lastUndone.set(next.lastUndone());
    plan.set(Optional.of(next.now()));
    unsaved.set(!plan.get().equals(saved));
    keepSoon();
  }

  /** Forgets what is kept of unsaved work, which nobody wants. */
  public void drop() {
    recovery.forgetOwn();
    dropped = true;
  }

  private void keepSoon() {
    if (unsaved.get() && !keepingSoon) {
      keepingSoon = true;
      tasks.after(KEPT_AFTER, this::keep);
    } else if (!unsaved.get()) {
      recovery.forgetOwn();
    }
  }

  private void keep() {
    keepingSoon = false;
    if (!unsaved.get() || dropped) {
      return;
    }
    WorkPlan work = plan.get().orElseThrow();
    Optional<Path> of = file.map(WorkFile::path);
    tasks.start(
        () -> recovery.keep(work, of),
        trouble -> {
          trouble.ifPresent(onTrouble);
          if (!unsaved.get() || dropped) {
            recovery.forgetOwn();
          }
        },
        fault -> onTrouble.accept(String.valueOf(fault.getMessage())));
  }

  /** Saves into a file that this becomes the file of, unless that was changed elsewhere. */
  public WorkFile.Saved save(WorkFile into) {
    return noted(into.save(plan.get().orElseThrow()));
  }

  /** The same, whatever the file holds now. */
  public WorkFile.Saved saveAllTheSame(WorkFile into) {
    return noted(into.saveAllTheSame(plan.get().orElseThrow()));
  }

  private WorkFile.Saved noted(WorkFile.Saved outcome) {
    if (outcome instanceof WorkFile.Saved.Done done) {
      file = Optional.of(done.file());
      saved = plan.get();
      unsaved.set(false);
      recovery.forgetOwn();
    }
    return outcome;
  }
}
