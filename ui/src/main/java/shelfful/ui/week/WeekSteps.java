package shelfful.ui.week;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.review.InspectedWeek;

/**
 * The week as it is now and the named steps that led to it. A step that goes on being planned in
 * the background stays one step. Used on the screen's thread alone.
 */
final class WeekSteps {
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private final ReadOnlyObjectWrapper<Optional<InspectedWeek>> now =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper nameOfLast = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper nameOfNext = new ReadOnlyStringWrapper("");

  private record Step(String name, InspectedWeek before, InspectedWeek after) {}

  ReadOnlyObjectProperty<Optional<InspectedWeek>> now() {
    return now.getReadOnlyProperty();
  }

  /** What would be taken back, in words; empty text when there is nothing. */
  ReadOnlyStringProperty nameOfLast() {
    return nameOfLast.getReadOnlyProperty();
  }

  /** What would be done again, in words; empty text when there is nothing. */
  ReadOnlyStringProperty nameOfNext() {
    return nameOfNext.getReadOnlyProperty();
  }

  /** Another week takes the place of the one before, which cannot come back. */
  void begin(InspectedWeek week) {
    done.clear();
    undone.clear();
    become(week);
  }

  /** One step further; what was taken back before is forgotten. */
  void note(String name, InspectedWeek after) {
    done.push(new Step(name, now.get().orElseThrow(), after));
    undone.clear();
    become(after);
  }

  /** The step that was done last led to something better; before any step, the week itself did. */
  void better(InspectedWeek after) {
    Optional.ofNullable(done.poll())
        .ifPresent(last -> done.push(new Step(last.name(), last.before(), after)));
    undone.clear();
    become(after);
  }

  /** Takes the last step back; false when there is none. */
  boolean undo() {
    Optional<Step> last = Optional.ofNullable(done.poll());
    last.ifPresent(
        step -> {
          undone.push(step);
          become(step.before());
        });
    return last.isPresent();
  }

  /** Does the step again that was taken back last; false when there is none. */
  boolean redo() {
    Optional<Step> next = Optional.ofNullable(undone.poll());
    next.ifPresent(
        step -> {
          done.push(step);
          become(step.after());
        });
    return next.isPresent();
  }

  private void become(InspectedWeek week) {
    now.set(Optional.of(week));
    nameOfLast.set(Optional.ofNullable(done.peek()).map(Step::name).orElse(""));
    nameOfNext.set(Optional.ofNullable(undone.peek()).map(Step::name).orElse(""));
  }
}
