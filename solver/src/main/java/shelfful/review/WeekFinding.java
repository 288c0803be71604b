package shelfful.review;

/**
 * One thing wrong with a week.
 *
 * @param rule the rule's id, the same as in docs/rules.md
 * @param severity whether the week may be used all the same
 * @param firingId the firing it is about, or empty text
 * @param batchId the batch it is about, or empty text
 * @param sentence what is wrong with its figures
 */
public record WeekFinding(
    String rule, Severity severity, String firingId, String batchId, String sentence) {

  /** Whether a week with such a finding may be used. */
  public enum Severity {
    /** It must not be fired like this. */
    BREAKS,
    /** It can be fired, but a wish is not met. */
    WISH
  }
}
