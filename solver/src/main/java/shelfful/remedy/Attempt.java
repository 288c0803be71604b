package shelfful.remedy;

import java.util.Optional;

/** One way of looking for a remedy. */
interface Attempt {

  /** The kind of remedy it looks for. */
  RemedyKind kind();

  /** Whether it could help against this reason at all. */
  boolean mayHelp(WaitingCase one);

  /** Tries; everything it plans is counted by the case. */
  Optional<Remedy> find(WaitingCase one);
}
