package shelfful.ui.desk;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import shelfful.edit.WorkPlan;
import shelfful.inspect.Inspector;
import shelfful.inspect.JudgedLoad;
import shelfful.ui.task.TaskRunner;

/**
 * Plans judged and drawn away from the screen's thread, in the way that loads are looked at now.
 * Used on the screen's thread but for {@link #of}.
 */
final class Drawings {
  private final TaskRunner tasks;
  private final Consumer<ShownLoad> screen;
  private final Consumer<Throwable> trouble;
  private Optional<ShownLoad> ready = Optional.empty();
  private int turn;

  /** Read where loads are drawn, away from the screen. */
  private volatile Sight sight = Sight.USUAL;

  /**
   * None yet.
   *
   * @param screen is given what was drawn
   */
  Drawings(TaskRunner tasks, Consumer<ShownLoad> screen, Consumer<Throwable> trouble) {
    this.tasks = tasks;
    this.screen = screen;
    this.trouble = trouble;
  }

  /** Draws on the thread it is called on. */
  ShownLoad of(WorkPlan plan, JudgedLoad judged) {
    return ShownLoad.of(plan, judged, sight);
  }

  /** Loads are looked at in another way from now on. */
  void see(Sight other) {
    sight = other;
  }

  /** Whether a drawing is what would be drawn now. */
  boolean isSeenRight(ShownLoad load) {
    return load.sight().equals(sight);
  }

  /** A drawing that is at hand already, for when its plan comes onto the desk. */
  void makeReady(ShownLoad load) {
    ready = Optional.of(load);
  }

  /** Draws a plan; what was to be drawn before it is not waited for. */
  void draw(WorkPlan plan) {
    turn++;
    int mine = turn;
    Optional<ShownLoad> drawn = ready.filter(one -> one.plan().equals(plan));
    ready = Optional.empty();
    if (drawn.isPresent()) {
      screen.accept(drawn.get());
      return;
    }
    tasks.start(
        () -> new Inspector().judge(plan.load()).map(judged -> of(plan, judged)),
        load -> load.filter(one -> mine == turn).ifPresent(screen),
        trouble);
  }

  /** Draws again what was seen in another way, unless something else is shown by then. */
  void drawAgain(ShownLoad load, Supplier<Optional<ShownLoad>> shown) {
    tasks.start(
        () -> of(load.plan(), load.judged()),
        drawn -> {
          if (shown.get().filter(now -> now == load).isPresent()) {
            screen.accept(drawn);
          }
        },
        trouble);
  }
}
