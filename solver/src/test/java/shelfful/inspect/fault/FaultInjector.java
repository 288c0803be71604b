package shelfful.inspect.fault;

import java.util.Optional;
import java.util.Random;
import shelfful.load.Load;

/** Plants one fault in a valid load, at a place that the seed chooses. */
public final class FaultInjector {

  /**
   * The load with one fault of the kind, or empty when this load has no place for it. What is asked
   * may be altered instead of where things stand: a mass limit just under what a shelf carries is a
   * fault as well.
   *
   * @param load one that breaks no rule
   */
  public Optional<Load> plant(FaultKind kind, Load load, long seed) {
    if (load.layers().isEmpty()) {
      return Optional.empty();
    }
    return kind.planter().plant(load, new Random(seed));
  }
}
