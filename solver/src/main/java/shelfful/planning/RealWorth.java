package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.choice.ChosenLevel;
import shelfful.choice.KnownLayer;
import shelfful.choice.LoadCheck;
import shelfful.planning.ShelfSpaces.NumberedSpace;

/** What chosen levels are worth with the rules that their choice does not know. */
final class RealWorth implements LoadCheck {
  /**
   * In pieces of plain worth: what a content counts less where it was never asked about just so,
   * for it may have been met where no keep-out is in its way.
   */
  private static final double OPEN = 0.4;

  /** The same where it was asked about, and did not fit. */
  private static final double REFUSED = 1.1;

  private final SketchJudge judge;
  private final ChosenWare ware;

  RealWorth(SketchJudge judge, ChosenWare ware) {
    this.judge = judge;
    this.ware = ware;
  }

  @Override
  public double worth(List<List<ChosenLevel>> levels) {
    Optional<Stacking> stacking = judge.stack(ware.needs(levels, ware::grams));
    return stacking.isPresent()
        ? ware.worth(levels, stacking.get()) - doubt(levels, stacking.get())
        : CANNOT_STAND;
  }

  private double doubt(List<List<ChosenLevel>> levels, Stacking stacking) {
    double doubt = 0;
    for (int c = 0; c < levels.size(); c++) {
      for (int l = 0; l < levels.get(c).size(); l++) {
        for (Spot spot : judge.stand().spotsOf(c)) {
          KnownLayer content = levels.get(c).get(l).contents().get(spot.place());
          long tallest = judge.classes().height(content.heightClass());
          NumberedSpace space = judge.space(spot, stacking.level(c, l), tallest);
          doubt += content.isEmpty() ? 0 : doubt(space, content.counts());
        }
      }
    }
    return doubt;
  }

  private double doubt(NumberedSpace space, int[] counts) {
    if (judge.answers().isOpen(space, counts)) {
      return OPEN;
    }
    return judge.answers().isRefused(space, counts) ? REFUSED : 0;
  }
}
