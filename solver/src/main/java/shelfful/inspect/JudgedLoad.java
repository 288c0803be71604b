package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;

/**
 * A load that the judge has looked at, whatever was found. What leaves the program is an {@link
 * InspectedLoad}; a {@link FaultyLoad} stays on the desk until it is mended.
 */
public sealed interface JudgedLoad permits InspectedLoad, FaultyLoad {

  /** What was judged. */
  Load load();

  /** What was measured, a row for each layer in the load's order. */
  List<LayerFigures> figures();

  /** What was found: rules that are broken first, then wishes that are not met. */
  List<Finding> findings();

  /** The rules that are broken; none for an {@link InspectedLoad}. */
  default List<Finding> faults() {
    return findings().stream()
        .filter(finding -> finding.severity() == Finding.Severity.BREAKS)
        .toList();
  }
}
