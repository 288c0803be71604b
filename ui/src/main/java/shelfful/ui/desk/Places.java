package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the user for files; empty when there is none after all. */
public interface Places {

  /** Which plan or work to open. */
  Optional<Path> toOpen();

  /** Where to save work. */
  Optional<Path> forWork();

  /** Where to save a plan for the command line and for others. */
  Optional<Path> forPlan();

  /** Where to save the sheets as PDF. */
  Optional<Path> forSheets();

  /** What is to become of work that no file holds. */
  enum Answer {
    SAVE,
    LEAVE,
    STAY
  }

  /** What is to become of work that no file holds, told in a sentence. */
  Answer beforeLeaving(String sentence);

  /** Shows a file with whatever the system has for it. */
  void show(Path file);
}
