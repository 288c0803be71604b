package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import shelfful.choice.ChoiceProblem;
import shelfful.choice.KindWorth;
import shelfful.choice.StackColumn;
import shelfful.kiln.Shelf;

/** Puts the choice of layers for a column plan into numbers. */
final class ChoiceTask {
  private static final int MOST_LEVELS = 14;

  private final Stand stand;
  private final ReadyWare ware;
  private final HeightClasses classes;

  ChoiceTask(Stand stand, ReadyWare ware, HeightClasses classes) {
    this.stand = stand;
    this.ware = ware;
    this.classes = classes;
  }

  /** Whether heights add up simply: no column stands on several. */
  boolean isSimple() {
    for (int c = 0; c < stand.columns(); c++) {
      if (stand.below(c).size() > 1) {
        return false;
      }
    }
    return classes.count() > 0;
  }

  ChoiceProblem problem() {
    PieceWorth worth = new PieceWorth(ware.lots());
    List<double[]> pieces = new ArrayList<>();
    for (WareKind kind : ware.kinds()) {
      pieces.add(
          ware.lots().stream()
              .filter(lot -> lot.kind().index() == kind.index())
              .flatMapToDouble(lot -> DoubleStream.generate(() -> worth.of(lot)).limit(lot.size()))
              .toArray());
    }
    List<StackColumn> columns = new ArrayList<>();
    for (int c = 0; c < stand.columns(); c++) {
      columns.add(column(c));
    }
    return new ChoiceProblem(columns, new KindWorth(pieces), classes.count(), stand.spots().size());
  }

  private StackColumn column(int c) {
    long thickness = StackColumn.NEVER;
    int shelves = MOST_LEVELS;
    for (Spot spot : stand.spotsOf(c)) {
      long thinnest =
          spot.shelves().stream()
              .mapToLong(shelf -> shelf.thickness().micrometres())
              .min()
              .orElse(StackColumn.NEVER);
      thickness = thickness == StackColumn.NEVER ? thinnest : Math.max(thickness, thinnest);
      shelves = Math.min(shelves, spot.shelves().stream().mapToInt(Shelf::count).sum());
    }
    long[] middle = new long[classes.count()];
    long[] top = new long[classes.count()];
    for (int k = 0; k < middle.length; k++) {
      long post = post(Math.max(classes.height(k) + stand.headroom(), stand.leastLayer()));
      middle[k] = Math.min(StackColumn.NEVER, thickness + post);
      top[k] = Math.min(StackColumn.NEVER, thickness + classes.height(k));
    }
    long lowest = Arrays.stream(middle).min().orElse(StackColumn.NEVER);
    shelves = (int) Math.min(shelves, stand.chamberHeight() / lowest + 1);
    int below = stand.below(c).isEmpty() ? -1 : stand.below(c).get(0);
    long capacity = Math.max(0, stand.ceiling() - post(stand.offFloor()));
    int[] spots = stand.spotsOf(c).stream().mapToInt(Spot::index).toArray();
    return new StackColumn(spots, below, capacity, middle, top, Math.max(1, shelves));
  }

  /** The shortest post that is long enough. */
  private long post(long least) {
    return stand.cupboard().lengths().stream()
        .mapToLong(PostLength::height)
        .filter(height -> height >= least)
        .min()
        .orElse(StackColumn.NEVER);
  }
}
