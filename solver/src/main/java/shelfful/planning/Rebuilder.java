package shelfful.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;

/**
 * Proposes a changed sketch: takes some layers apart and builds them anew, otherwise. Every
 * proposal is mended and topped up with what waits, so most are loads that could be fired.
 */
final class Rebuilder {
  private static final double GREEDY_NOISE = 0.4;

  private final SketchJudge judge;
  private final LevelBuilder builder;
  private final Mender mender;
  private final LayersMetProposals layersMet;
  private boolean time;

  Rebuilder(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.builder = new LevelBuilder(judge, appeal);
    this.mender = new Mender(judge, appeal);
    this.layersMet = new LayersMetProposals(judge, appeal);
  }

  /**
   * The ways of changing a sketch, with how often each is tried in 100: alone; where layers met are
   * made use of as well, for there what is built wholly anew hardly ever is better; and there in
   * time, where a share goes with what it brought for the time it took (decision 0038).
   */
  private enum Way {
    ONE_LEVEL(26, 22, 15),
    TWO_LEVELS(30, 14, 12),
    THIN_AND_REFILL(24, 48, 62),
    SWAP_LEVELS(12, 12, 10),
    WHOLE_COLUMN(8, 4, 1);

    private final int alone;
    private final int besideLayersMet;
    private final int inTime;

    Way(int alone, int besideLayersMet, int inTime) {
      this.alone = alone;
      this.besideLayersMet = besideLayersMet;
      this.inTime = inTime;
    }

    static Way pick(Random random, boolean layersMet, boolean time) {
      int drawn = random.nextInt(100);
      for (Way way : values()) {
        int beside = time ? way.inTime : way.besideLayersMet;
        drawn -= layersMet ? beside : way.alone;
        if (drawn < 0) {
          return way;
        }
      }
      return ONE_LEVEL;
    }
  }

  /** From now on proposes for a search that ends by time, or after so many steps. */
  void inTime(boolean ends) {
    time = ends;
    layersMet.inTime(ends);
  }

  /** Whether what is found out about layers in one load serves the others. */
  boolean makesUseOfLayersMet() {
    return layersMet.isAtWork();
  }

  /** A load at once: like {@link #greedy()}, but every shelf is left with room to spare. */
  Sketch coarse() {
    builder.coarsely(true);
    Sketch sketch = greedy();
    builder.coarsely(false);
    return sketch;
  }

  /**
   * A first good load: the best-looking level of any column on top of it, until none can be built.
   */
  Sketch greedy() {
    return greedy(() -> 1);
  }

  /** The same with what looks best blurred: every time another load. */
  Sketch greedy(Random random) {
    return greedy(() -> Math.exp(GREEDY_NOISE * random.nextGaussian()));
  }

  private Sketch greedy(DoubleSupplier noise) {
    Sketch sketch = judge.staying().bare();
    for (int c = 0; c < sketch.columns(); c++) {
      fillHeld(sketch, c, 0, noise);
    }
    while (builder.buildBest(sketch, noise)) {
      // each round builds one level
    }
    boolean mended = finish(sketch, noise, levels(sketch));
    if (mended && isSound(sketch)) {
      return sketch;
    }
    return judge.staying().isNothing() ? lowered(sketch) : withMatesFirst();
  }

  private boolean isSound(Sketch sketch) {
    return judge.judge(sketch.copy()).broken() == 0;
  }

  /** Takes levels off, the uppermost first, until what is left can be fired. */
  private Sketch lowered(Sketch sketch) {
    List<int[]> levels = levels(sketch);
    for (int l = levels.size() - 1; l >= 0; l--) {
      if (mender.mend(sketch) && isSound(sketch)) {
        return sketch;
      }
      int[] top = levels.get(l);
      if (top[1] < sketch.levels(top[0])) {
        sketch.removeLevel(top[0], top[1]);
      }
    }
    return judge.staying().bare();
  }

  /** What stays and the rest of its sets before anything else; only what stays where that fails. */
  private Sketch withMatesFirst() {
    Sketch sketch = judge.staying().bare();
    do {
      Sketch tried = sketch.copy();
      builder.completeSets(tried);
      Sketch found = goOn(tried);
      if (found != null) {
        return found;
      }
    } while (builder.buildBest(sketch, () -> 1));
    return judge.staying().bare();
  }

  /** A sketch from elsewhere mended and topped up with what waits, or null where that fails. */
  Sketch goOn(Sketch from) {
    Sketch sketch = from.copy();
    boolean mended = finish(sketch, () -> 1, levels(sketch));
    return mended && isSound(sketch) ? sketch : null;
  }

  /** A changed copy, or null when the change led to nothing that stands. */
  Sketch propose(Sketch now, Random random) {
    Sketch chosen = layersMet.propose(now, random);
    if (chosen == null) {
      return rebuilt(now, random);
    }
    List<int[]> order = levels(chosen);
    Collections.shuffle(order, random);
    return finish(chosen, () -> 1, order) ? chosen : null;
  }

  private Sketch rebuilt(Sketch now, Random random) {
    Sketch sketch = now.copy();
    List<int[]> levels = levels(sketch);
    double spread = 0.15 + 0.6 * random.nextDouble();
    DoubleSupplier noise = () -> Math.exp(spread * random.nextGaussian());
    if (levels.isEmpty()) {
      rebuildColumn(sketch, random.nextInt(sketch.columns()), noise);
      return finish(sketch, noise, levels(sketch)) ? sketch : null;
    }
    int[] at = levels.get(random.nextInt(levels.size()));
    switch (Way.pick(random, layersMet.isAtWork(), time)) {
      case ONE_LEVEL -> rebuild(sketch, at, 1, noise);
      case TWO_LEVELS -> rebuildTwo(sketch, at, random, noise);
      case THIN_AND_REFILL -> thin(sketch, at, random);
      case SWAP_LEVELS -> swap(sketch, at, levels.get(random.nextInt(levels.size())), noise);
      case WHOLE_COLUMN -> rebuildColumn(sketch, at[0], noise);
    }
    List<int[]> order = levels(sketch);
    Collections.shuffle(order, random);
    return finish(sketch, noise, order) ? sketch : null;
  }

  private boolean finish(Sketch sketch, DoubleSupplier noise, List<int[]> order) {
    builder.completeSets(sketch);
    if (!mender.mend(sketch)) {
      return false;
    }
    order.removeIf(at -> at[1] >= sketch.levels(at[0]));
    // As many can come in as go out for them, so that nothing is added and sets are split.
    if (builder.squeezeIn(sketch, order, noise) > 0 || !isSound(sketch)) {
      builder.completeSets(sketch);
      return mender.mend(sketch);
    }
    return true;
  }

  static List<int[]> levels(Sketch sketch) {
    List<int[]> levels = new ArrayList<>();
    for (int c = 0; c < sketch.columns(); c++) {
      for (int l = 0; l < sketch.levels(c); l++) {
        levels.add(new int[] {c, l});
      }
    }
    return levels;
  }

  private void rebuild(Sketch sketch, int[] at, int count, DoubleSupplier noise) {
    int position = at[1];
    for (int i = 0; i < count && position < sketch.levels(at[0]); i++) {
      position += sketch.removeLevel(at[0], position) ? 0 : 1;
    }
    fillUp(sketch, at, noise);
  }

  private void rebuildTwo(Sketch sketch, int[] at, Random random, DoubleSupplier noise) {
    if (random.nextBoolean()) {
      rebuild(sketch, at, 2, noise);
      return;
    }
    List<int[]> levels = levels(sketch);
    int[] other = levels.get(random.nextInt(levels.size()));
    int first = Math.max(at[1], other[1]);
    if (at[0] == other[0]) {
      sketch.removeLevel(at[0], first);
      if (at[1] != other[1]) {
        sketch.removeLevel(at[0], Math.min(at[1], other[1]));
      }
    } else {
      sketch.removeLevel(at[0], at[1]);
      sketch.removeLevel(other[0], other[1]);
    }
    fillUp(sketch, at, noise);
    fillUp(sketch, other, noise);
  }

  private void fillUp(Sketch sketch, int[] at, DoubleSupplier noise) {
    int position = fillHeld(sketch, at[0], Math.min(at[1], sketch.levels(at[0])), noise);
    while (builder.build(sketch, at[0], position, noise)) {
      position++;
    }
  }

  /** Fills the levels that are held where they are, from one on; the first that is not held. */
  private int fillHeld(Sketch sketch, int column, int from, DoubleSupplier noise) {
    int level = from;
    while (sketch.held().keepsLevel(column, level)) {
      builder.refill(sketch, column, level, noise);
      level++;
    }
    return level;
  }

  private void rebuildColumn(Sketch sketch, int column, DoubleSupplier noise) {
    int level = 0;
    while (level < sketch.levels(column)) {
      level += sketch.removeLevel(column, level) ? 0 : 1;
    }
    fillUp(sketch, new int[] {column, 0}, noise);
  }

  /** Takes a share of each lot off a level; topping up then finds others for the room. */
  private void thin(Sketch sketch, int[] at, Random random) {
    int places = sketch.places(at[0], at[1]);
    int[] counts = sketch.counts(at[0], at[1], random.nextInt(places));
    double share = 0.1 + 0.5 * random.nextDouble();
    int spared = random.nextInt(counts.length);
    for (int lot = 0; lot < counts.length; lot++) {
      for (int i = counts[lot]; i > 0 && lot != spared && !sketch.held().kept()[lot]; i--) {
        counts[lot] -= random.nextDouble() < share ? 1 : 0;
      }
    }
  }

  private void swap(Sketch sketch, int[] at, int[] other, DoubleSupplier noise) {
    boolean held =
        sketch.held().keepsLevel(at[0], at[1]) || sketch.held().keepsLevel(other[0], other[1]);
    if (!held && sketch.places(at[0], at[1]) == sketch.places(other[0], other[1])) {
      sketch.swapLevels(at[0], at[1], other[0], other[1]);
    } else {
      rebuild(sketch, at, 1, noise);
    }
  }
}
