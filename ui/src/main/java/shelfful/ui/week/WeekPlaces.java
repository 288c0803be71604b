package shelfful.ui.week;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Asks the user for files and before a week is left, and hands firings to the desk; empty when
 * there is no file after all.
 */
public interface WeekPlaces {

  /** Whether the week may give way to another, asked where no file holds it. */
  boolean mayLeave();

  /** Which week to open. */
  Optional<Path> toOpen();

  /** Where to save the week. */
  Optional<Path> forWeek();

  /** Where to save the calendar. */
  Optional<Path> forCalendar();

  /** Where to save the sheets of a firing. */
  Optional<Path> forSheets(String firingId);

  /** The folder to save the sheets of all firings in. */
  Optional<Path> forAllSheets();

  /** Shows a firing's load on the desk. */
  void onDesk(OpenedFiring firing);
}
