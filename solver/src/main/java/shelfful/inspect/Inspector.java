package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;

/** The judge of finished loads. Stateless; one may be shared by threads. */
public final class Inspector {

  /** Judges a load from nothing but itself and what was asked. */
  public Inspection inspect(Load load) {
    return new Inspection.Passed(new InspectedLoad(load, List.of(), List.of()));
  }
}
