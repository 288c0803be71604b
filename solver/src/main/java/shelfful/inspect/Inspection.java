package shelfful.inspect;

import java.util.List;

/** What the judge says of a load. */
public sealed interface Inspection {

  /** It breaks no rule. */
  record Passed(InspectedLoad load) implements Inspection {}

  /** It breaks rules; {@code findings} names every one, and the wishes not met after them. */
  record Failed(List<Finding> findings) implements Inspection {
    /** Takes its own copy. */
    public Failed {
      findings = List.copyOf(findings);
    }
  }
}
