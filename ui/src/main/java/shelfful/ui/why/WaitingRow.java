package shelfful.ui.why;

import java.util.List;
import java.util.Optional;
import shelfful.remedy.Explanation;
import shelfful.remedy.Remedy;
import shelfful.remedy.WaitingGroup;

/**
 * Alike pieces that wait, with how far looking for a remedy has come.
 *
 * @param group the pieces with their reason
 * @param look how far it has come
 * @param explanation what was tried so far; empty before anything was
 */
public record WaitingRow(WaitingGroup group, Look look, Optional<Explanation> explanation) {

  /** How far looking for a remedy has come. */
  public enum Look {
    /** Nobody asked yet. */
    NOT_YET,
    /** Loads are being tried. */
    GOES_ON,
    /** It was stopped before everything was tried: nothing follows from finding none. */
    STOPPED,
    /** Everything was tried. */
    DONE
  }

  static WaitingRow of(WaitingGroup group) {
    return new WaitingRow(group, Look.NOT_YET, Optional.empty());
  }

  WaitingRow with(Look other) {
    return new WaitingRow(group, other, explanation);
  }

  /** What was found, the cheapest first. */
  public List<Remedy> remedies() {
    return explanation.map(Explanation::remedies).orElse(List.of());
  }

  /** Whether everything was tried and nothing found. */
  public boolean hasNone() {
    return look == Look.DONE && remedies().isEmpty();
  }
}
