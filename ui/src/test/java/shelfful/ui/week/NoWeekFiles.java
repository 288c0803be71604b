package shelfful.ui.week;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Never has a file.
 *
 * @param desk is given firings to show
 */
record NoWeekFiles(Consumer<OpenedFiring> desk) implements WeekPlaces {
  @Override
  public Optional<Path> toOpen() {
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
