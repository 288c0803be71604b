package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;

/**
 * Loads with the judge's stamp but without its judgement, for tests of what comes after the judge.
 */
public final class Stamped {
  private Stamped() {}

  public static InspectedLoad load(Load load, List<LayerFigures> figures, List<Finding> wishes) {
    return new InspectedLoad(load, figures, wishes);
  }
}
