package shelfful.inspect;

import java.util.List;
import java.util.Optional;

/** What the judge says of a load. */
public sealed interface Inspection {

  /** The load, if it breaks no rule. */
  default Optional<InspectedLoad> passed() {
    return this instanceof Passed one ? Optional.of(one.load()) : Optional.empty();
  }

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
