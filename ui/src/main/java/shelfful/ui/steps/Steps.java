package shelfful.ui.steps;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The steps that led to a value, each with the value before and after it. Used on the screen's
 * thread alone.
 *
 * @param <V> an immutable value
 */
public final class Steps<V> {
  /** Older steps are forgotten. */
  private static final int MOST = 500;

  private final Deque<Step<V>> done = new ArrayDeque<>();
  private final Deque<Step<V>> undone = new ArrayDeque<>();

  /**
   * One step.
   *
   * @param name what was done, in words
   */
  public record Step<V>(String name, V before, V after) {}

  /** Notes a step; what was taken back before is forgotten. */
  public void note(Step<V> step) {
    done.push(step);
    undone.clear();
    if (done.size() > MOST) {
      done.removeLast();
    }
  }

  /** Takes the last step back; empty when there is none. */
  public Optional<Step<V>> undo() {
    Optional<Step<V>> last = Optional.ofNullable(done.poll());
    last.ifPresent(undone::push);
    return last;
  }

  /** Does the step again that was taken back last; empty when there is none. */
  public Optional<Step<V>> redo() {
    Optional<Step<V>> last = Optional.ofNullable(undone.poll());
    last.ifPresent(done::push);
    return last;
  }

  /** Forgets all steps, as when another file is opened. */
  public void clear() {
    done.clear();
    undone.clear();
  }
}
