package shelfful.ui.desk;

import java.util.Optional;
import shelfful.drawing.PaperSize;
import shelfful.load.Load;
import shelfful.measure.LengthUnit;

/**
 * How loads are shown.
 *
 * @param paper sheets are laid out for
 * @param unit of every figure; empty for the one that the load's studio names
 */
record Sight(PaperSize paper, Optional<LengthUnit> unit) {
  static final Sight USUAL = new Sight(PaperSize.A4, Optional.empty());

  LengthUnit unitFor(Load load) {
    return unit.orElse(load.request().studio().unit());
  }
}
