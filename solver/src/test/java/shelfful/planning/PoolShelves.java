package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shelfful.packing.Effort;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.packing.SettingCheck;
import shelfful.packing.ShelfPacker;
import shelfful.packing.ShelfQuestion;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;

/** Settles shelves that come out of other loads where they are to stand now. */
final class PoolShelves {
  private static final Effort EFFORT = new Effort(3, 12);

  private final SketchJudge judge;
  private final double[][] gaps;
  private final ShelfPacker packer = new ShelfPacker();
  private final Set<String> refused = new HashSet<>();

  PoolShelves(SketchJudge judge) {
    this.judge = judge;
    this.gaps = new PairGaps(judge.stand().request()).between(judge.ware().kinds());
  }

  /**
   * Sees to it that the judge knows a setting of these counts: as they stood, less what is left
   * off, or else as the packer finds it from there. False when there is none.
   */
  boolean settle(Spot spot, LevelStand level, int[] counts, Packed stood) {
    NumberedSpace space = judge.space(spot, level, judge.tallest(counts));
    int[] kinds = judge.byKind(counts);
    PresentKinds present = PresentKinds.of(kinds);
    ShelfQuestion question =
        new ShelfQuestion(
            space.space(),
            present.of(judge.ware().kinds().stream().map(WareKind::body).toList()),
            present.counts(),
            present.of(gaps));
    List<Placed> kept = kept(stood, kinds);
    String key = space.number() + Arrays.toString(kinds);
    // Loads hold whole micrometres, for which every clearance has a margin.
    boolean complete = kept.size() == question.bodies();
    if (complete && SettingCheck.spare(question, present.ask(kept)) >= -Margin.FOR_ROUNDING) {
      judge.answers().learn(space, kinds, new Packed(kept, 0));
      return true;
    }
    if (refused.contains(key)) {
      return false;
    }
    if (packer.pack(question, EFFORT, 1, present.ask(kept)) instanceof Packed found) {
      judge.answers().learn(space, kinds, new Packed(present.answer(found.bodies()), 0));
      return true;
    }
    refused.add(key);
    return false;
  }

  /** The bodies that stood, by kind, no more of each than there are to be. */
  private static List<Placed> kept(Packed stood, int[] kinds) {
    int[] left = kinds.clone();
    List<Placed> kept = new ArrayList<>();
    for (Placed body : stood.bodies()) {
      if (left[body.kind()]-- > 0) {
        kept.add(body);
      }
    }
    kept.sort(Comparator.comparingInt(Placed::kind));
    return kept;
  }
}
