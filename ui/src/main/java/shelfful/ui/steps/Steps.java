package shelfful.ui.steps;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;

/**
 * Everything done at the desk in its order, to the plan, to the studio and to the list alike: the
 * last thing done anywhere is the first that is taken back. Every step is kept, because the values
 * before and after it share what they have in common. Used on the screen's thread alone.
 */
public final class Steps {
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private final ReadOnlyObjectWrapper<Optional<Step>> lastDone =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Step>> lastUndone =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Runnable before = () -> {};

  /**
   * One step.
   *
   * @param where what it was done to
   * @param name what was done, in words
   * @param back takes it back, right after all later ones were
   * @param forth does it again, right after it was taken back
   */
  public record Step(Object where, String name, Runnable back, Runnable forth) {}

  /** What is done each time before a step is taken back or done again; it may note steps itself. */
  public void beforeTurning(Runnable other) {
    before = other;
  }

  /** What would be taken back. */
  public ReadOnlyObjectProperty<Optional<Step>> lastDone() {
    return lastDone.getReadOnlyProperty();
  }

  /** What would be done again. */
  public ReadOnlyObjectProperty<Optional<Step>> lastUndone() {
    return lastUndone.getReadOnlyProperty();
  }

  /** What would be taken back, in words; empty text when there is nothing. */
  public ObservableValue<String> nameOfLast() {
    return lastDone.map(step -> step.map(Step::name).orElse(""));
  }

  /** What would be done again, in words; empty text when there is nothing. */
  public ObservableValue<String> nameOfNext() {
    return lastUndone.map(step -> step.map(Step::name).orElse(""));
  }

  /** Every step that could be taken back, the first one first. */
  public List<Step> done() {
    List<Step> inOrder = new ArrayList<>(done);
    Collections.reverse(inOrder);
    return List.copyOf(inOrder);
  }

  /** Notes a step that was done; what was taken back before is forgotten. */
  public void note(Step step) {
    done.push(step);
    undone.clear();
    tell();
  }

  /** Takes the last step back; empty when there is none. */
  public Optional<Step> undo() {
    before.run();
    Optional<Step> last = Optional.ofNullable(done.poll());
    last.ifPresent(
        step -> {
          undone.push(step);
          step.back().run();
        });
    tell();
    return last;
  }

  /** Does the step again that was taken back last; empty when there is none. */
  public Optional<Step> redo() {
    before.run();
    Optional<Step> last = Optional.ofNullable(undone.poll());
    last.ifPresent(
        step -> {
          done.push(step);
          step.forth().run();
        });
    tell();
    return last;
  }

  /** Forgets what was done to one thing, as when another takes its place. */
  public void forget(Object where) {
    done.removeIf(step -> step.where() == where);
    undone.removeIf(step -> step.where() == where);
    tell();
  }

  private void tell() {
    lastDone.set(Optional.ofNullable(done.peek()));
    lastUndone.set(Optional.ofNullable(undone.peek()));
  }
}
