package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.LoadRequest;

/** What planning works with, laid out for one request without starting a search. */
record Bench(Stand stand, ReadyWare ware, SketchJudge judge, Rulebook rulebook) {
  private static final int LEVELS = 4;

  static Bench of(LoadRequest request) {
    Stand stand = new Stand(request, request.studio().kilns().get(0).columnPlans().get(0));
    ReadyWare ware = new LotSorter(request).sort(piece -> Optional.empty());
    PairGaps gaps = new PairGaps(request);
    double[][] between = gaps.between(ware.kinds());
    ShelfSpaces spaces =
        new ShelfSpaces(
            stand, gaps.widest(ware.kinds()), new PostCupboard(request.studio()).widest());
    ShelfAnswers answers = new ShelfAnswers(ware, between, request.seed(), () -> false);
    SketchJudge judge = new SketchJudge(stand, ware, spaces, answers);
    SlotTable slots = new SlotTable(stand, LEVELS, ware);
    Rebuilder rebuilder = new Rebuilder(judge, new Appeal(ware, between));
    return new Bench(
        stand, ware, judge, new Rulebook(judge, new Workbench(rebuilder, slots, LEVELS)));
  }

  /** So many undecided pieces of a lot as it has. */
  List<PieceChoice> pieces() {
    List<PieceChoice> pieces = new ArrayList<>();
    for (Lot lot : ware.lots()) {
      for (int i = 0; i < lot.size(); i++) {
        pieces.add(new PieceChoice(pieces.size(), lot));
      }
    }
    return pieces;
  }

  /** A sketch of one column and place with these counts by lot on each level. */
  static Sketch sketch(int[]... levels) {
    Sketch sketch = new Sketch(1, levels[0].length);
    for (int l = 0; l < levels.length; l++) {
      sketch.insertLevel(0, l, 1);
      System.arraycopy(levels[l], 0, sketch.counts(0, l, 0), 0, levels[l].length);
    }
    return sketch;
  }
}
