package shelfful.ui.studio;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.app.KeepAStudio;
import shelfful.studio.Studio;

/** What is wrong with a studio, in sentences. */
final class StudioFaults {
  private StudioFaults() {}

  /** Everything that is odd about a studio, each in a line; empty text when there is nothing. */
  static String of(Studio studio) {
    return KeepAStudio.judge(studio).faults().stream()
        .map(fault -> fault.where() + ": " + fault.wrong())
        .distinct()
        .collect(Collectors.joining("\n"));
  }

  /** Why the file of a changed studio could not be read back; empty when it could. */
  static Optional<String> added(Studio before, Studio after) {
    KeepAStudio.Judgement judgement = KeepAStudio.judge(after);
    if (judgement.sound()) {
      return Optional.empty();
    }
    List<KeepAStudio.Fault> known = KeepAStudio.judge(before).faults();
    return judgement.faults().stream()
        .filter(fault -> !known.contains(fault))
        .findFirst()
        .map(fault -> (fault.wrong() + " " + fault.mend()).strip());
  }
}
