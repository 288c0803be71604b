package shelfful.remedy;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Why alike pieces wait, and what was tried to bring them in.
 *
 * @param group the pieces, with their reason
 * @param trials in the order they were made, cheapest first; empty only when it was cut short
 * @param cutShort whether the search was stopped before everything was tried; what it was at then
 *     is no trial
 */
public record Explanation(WaitingGroup group, List<Trial> trials, boolean cutShort) {
  /** Takes its own copy. */
  public Explanation {
    trials = List.copyOf(trials);
  }

  /** What was found, cheapest first; may be empty. */
  public List<Remedy> remedies() {
    return trials.stream().flatMap(trial -> trial.found().stream()).toList();
  }

  /**
   * What was tried in vain, and whether the search was cut short, in sentences; empty text when
   * everything tried was found.
   */
  public String inVain() {
    List<String> vain =
        trials.stream()
            .filter(trial -> trial.found().isEmpty())
            .map(trial -> trial.kind().words() + times(trial.tries()))
            .toList();
    String stopped = cutShort ? "Stopped before everything was tried." : "";
    if (vain.isEmpty()) {
      return stopped;
    }
    String list = vain.stream().collect(Collectors.joining(", "));
    String why =
        trials.stream()
            .filter(trial -> trial.found().isEmpty() && !trial.why().isEmpty())
            .map(trial -> " Not in " + trial.kind().words() + ": " + trial.why())
            .collect(Collectors.joining());
    boolean none = remedies().isEmpty() && !cutShort;
    return (cutShort ? stopped + " " : "")
        + (none ? "No remedy was found. Tried: " : "Tried in vain: ")
        + list
        + "."
        + why;
  }

  /** Nothing where a try for a cheaper kind told as much. */
  private static String times(int tries) {
    return tries == 0 ? "" : tries == 1 ? " (1 try)" : " (" + tries + " tries)";
  }
}
