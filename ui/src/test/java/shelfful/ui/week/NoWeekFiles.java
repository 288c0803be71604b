package shelfful.ui.week;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Never has a file.
 *
 * @param mayLeave whether a week may give way to another
 * @param asked counts how often a file to open was asked for
 * @param desk is given firings to show
 */
record NoWeekFiles(boolean mayLeave, AtomicInteger asked, Consumer<OpenedFiring> desk)
    implements WeekPlaces {
  /** A week may always give way. */
  NoWeekFiles(Consumer<OpenedFiring> desk) {
    this(true, new AtomicInteger(), desk);
  }

  @Override
  public Optional<Path> toOpen() {
    asked.incrementAndGet();
    return Optional.empty();
  }

  @Override
  public Optional<Path> forWeek() {
    return Optional.empty();
  }

  @Override
  public Optional<Path> forCalendar() {
    return Optional.empty();
  }

  @Override
  public Optional<Path> forSheets(String firingId) {
    return Optional.empty();
  }

  @Override
  public Optional<Path> forAllSheets() {
    return Optional.empty();
  }

  @Override
  public void onDesk(OpenedFiring firing) {
    desk.accept(firing);
  }
}
