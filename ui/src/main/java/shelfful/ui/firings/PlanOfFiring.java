package shelfful.ui.firings;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import shelfful.app.FiringFolder;
import shelfful.inspect.InspectedLoad;
import shelfful.record.FiringRecord;
import shelfful.ui.task.TaskRunner;

/** The plan that a firing was loaded from, read in the background. On the screen's thread alone. */
final class PlanOfFiring {
  private final TaskRunner tasks;
  private final Consumer<Throwable> failed;
  private final ReadOnlyObjectWrapper<Optional<InspectedLoad>> plan =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private String of = "";

  /** Counts on with every other firing; the plan of one before comes late. */
  private int turn;

  PlanOfFiring(TaskRunner tasks, Consumer<Throwable> failed) {
    this.tasks = tasks;
    this.failed = failed;
  }

  /** The plan as soon as it has been read. */
  ReadOnlyObjectProperty<Optional<InspectedLoad>> plan() {
    return plan.getReadOnlyProperty();
  }

  /** Forgets the plan; it is read again when its firing is looked at. */
  void clear() {
    turn++;
    of = "";
    plan.set(Optional.empty());
  }

  /**
   * Looks at another firing, or on at the same one.
   *
   * @param folder that its plan is in; empty when nothing keeps it
   */
  void lookAt(Optional<FiringRecord> record, Optional<FiringFolder> folder) {
    String id = record.map(FiringRecord::id).orElse("");
    if (!id.equals(of)) {
      clear();
      of = id;
      folder.ifPresent(from -> record.ifPresent(one -> read(from, one)));
    }
  }

  private void read(FiringFolder folder, FiringRecord record) {
    int mine = turn;
    tasks.start(
        () -> folder.planOf(record),
        found -> {
          if (mine == turn) {
            plan.set(found);
          }
        },
        failed);
  }
}
