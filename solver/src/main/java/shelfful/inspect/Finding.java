package shelfful.inspect;

import java.util.List;

/**
 * One thing wrong with a load.
 *
 * @param rule the rule's id, the same as in docs/rules.md
 * @param severity whether the load may be used all the same
 * @param layerId the layer it is on, or empty text when it is about the whole load
 * @param pieceIds the pieces concerned, may be empty
 * @param sentence what is wrong with its figures, measured and required, and how to mend it
 */
public record Finding(
    String rule, Severity severity, String layerId, List<String> pieceIds, String sentence) {
  /** Takes its own copy. */
  public Finding {
    pieceIds = List.copyOf(pieceIds);
  }

  /** Whether a load with such a finding may be used. */
  public enum Severity {
    /** It must not be loaded like this. */
    BREAKS,
    /** It can be loaded, but a wish of the house is not met. */
    WISH
  }
}
