package shelfful.review;

import java.util.List;

/** What the judge says of a week. */
public sealed interface WeekInspection {

  /** It breaks no rule. */
  record Passed(InspectedWeek week) implements WeekInspection {}

  /** It breaks rules; {@code findings} names every one, and the wishes not met after them. */
  record Failed(List<WeekFinding> findings) implements WeekInspection {
    /** Takes its own copy. */
    public Failed {
      findings = List.copyOf(findings);
    }
  }
}
