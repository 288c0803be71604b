package shelfful.ui.desk;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import shelfful.load.LoadRequest;
import shelfful.ui.task.TaskRunner;

/**
 * How many pieces any setting of what is on the desk can hold. It is worked out once for a request,
 * once better loads of it no longer come fast, beside everything else and one at a time; nobody
 * waits for it. Used on the screen's thread alone.
 */
final class MostThatFits {
  /** It begins once no other load was shown for so long, as better ones keep the machine busy. */
  private static final Duration CALM = Duration.ofSeconds(3);

  private final TaskRunner tasks;
  private final Runnable told;
  private Optional<Function<LoadRequest, OptionalInt>> bound = Optional.empty();
  private Optional<LoadRequest> wanted = Optional.empty();
  private Optional<LoadRequest> known = Optional.empty();
  private OptionalInt most = OptionalInt.empty();
  private boolean working;
  private int asked;

  /**
   * Knows nothing yet.
   *
   * @param told is run when it is known
   */
  MostThatFits(TaskRunner tasks, Runnable told) {
    this.tasks = tasks;
    this.told = told;
  }

  /** Who works it out, on a thread that is not the screen's. */
  void boundedBy(Function<LoadRequest, OptionalInt> other) {
    bound = Optional.of(other);
  }

  /** The most that a setting of a request can hold; empty while it is not known. */
  OptionalInt of(LoadRequest request) {
    return known.equals(Optional.of(request.keepingNothing())) ? most : OptionalInt.empty();
  }

  /** Has it worked out when the desk has come to rest, unless that was done or goes on. */
  void ask(LoadRequest request) {
    // Any setting is meant, whatever must stay where it is at the moment.
    wanted = Optional.of(request.keepingNothing());
    asked++;
    int mine = asked;
    tasks.after(
        CALM,
        () -> {
          if (mine == asked) {
            next();
          }
        });
  }

  private void next() {
    if (!working && bound.isPresent() && !wanted.equals(known)) {
      working = true;
      LoadRequest request = wanted.orElseThrow();
      tasks.startIdly(
          () -> bound.get().apply(request),
          found -> found(request, found),
          fault -> found(request, OptionalInt.empty()));
    }
  }

  /** A limit that could not be worked out is not told: nothing else depends on it. */
  private void found(LoadRequest request, OptionalInt limit) {
    working = false;
    known = Optional.of(request);
    most = limit;
    told.run();
    next();
  }
}
