package shelfful.drawing;

import java.util.Optional;

/**
 * What the controller is set to, as the person who prints says; a plan does not hold it. What is
 * not given is left as a blank to fill in by hand.
 *
 * @param name of the program
 * @param hoursUp from the start to the end of the last hold
 * @param hoursDown from there until the kiln may be opened
 */
public record ProgramNote(
    Optional<String> name, Optional<String> hoursUp, Optional<String> hoursDown) {
  public static final ProgramNote BLANK =
      new ProgramNote(Optional.empty(), Optional.empty(), Optional.empty());
}
