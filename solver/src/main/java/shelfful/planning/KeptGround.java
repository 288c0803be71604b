package shelfful.planning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import shelfful.load.KeptProblem;
import shelfful.load.KeptProblem.Code;
import shelfful.load.LeftOut;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.Point;
import shelfful.packing.BodyKind;
import shelfful.packing.Placed;
import shelfful.packing.ShelfSpace;
import shelfful.packing.Spare;

/** Whether all that is kept can stand where it is kept, were nothing else in the kiln. */
final class KeptGround {
  private final SketchJudge judge;
  private final Staying staying;
  private final double[][] gaps;
  private final List<KeptProblem> problems = new ArrayList<>();
  private final List<Kept> kept = new ArrayList<>();

  /** One kept piece. */
  private record Kept(String id, Lot lot, LayerSlot slot, Placed body) {}

  private KeptGround(SketchJudge judge, double[][] gaps) {
    this.judge = judge;
    this.staying = judge.staying();
    this.gaps = gaps;
    for (Lot lot : judge.ware().lots()) {
      for (int i = 0; lot.isKept() && i < lot.size(); i++) {
        Placed body = staying.bodies(lot.index()).get(i);
        kept.add(new Kept(lot.pieces().get(i).id(), lot, staying.slot(lot), body));
      }
    }
  }

  /**
   * What is wrong, the plainest first.
   *
   * @param gaps by kind, as the packer is asked to keep them
   */
  static List<KeptProblem> problems(SketchJudge judge, double[][] gaps) {
    KeptGround ground = new KeptGround(judge, gaps);
    ground.waiting();
    ground.kept.forEach(ground::standsClear);
    for (int i = 0; i < ground.kept.size(); i++) {
      for (int j = 0; j < i; j++) {
        ground.apart(ground.kept.get(j), ground.kept.get(i));
      }
    }
    if (ground.problems.isEmpty()) {
      ground.stack();
    }
    return ground.problems;
  }

  private void waiting() {
    Set<String> pinned = new HashSet<>();
    judge.stand().request().kept().orElseThrow().standing().forEach(p -> pinned.add(p.pieceId()));
    for (LeftOut out : judge.ware().waiting()) {
      if (pinned.contains(out.pieceId())) {
        add(Code.MAY_NOT_GO_IN, out.pieceId() + " is kept. " + out.sentence(), out.pieceId());
      }
    }
  }

  private void standsClear(Kept one) {
    Spot spot = spot(one.slot());
    BodyKind kind = one.lot().kind().body();
    ShelfSpace open = new ShelfSpace(judge.spaces().openRooms(spot), List.of());
    double inside = Spare.inRooms(open, kind, one.body().pose());
    if (isShort(inside)) {
      add(
          Code.OUTSIDE,
          one.id() + " is kept where it is " + by(inside) + " too near the wall or the edge.",
          one.id());
    }
    boolean carries = one.slot().level() + 1 < staying.levels().levels(one.slot().column());
    List<Point> posts =
        carries ? judge.stand().column(one.slot().column()).posts() : List.<Point>of();
    // Over the chamber, where no keep-out is: how high the layer will lie is not known yet.
    long over = 2 * judge.stand().chamberHeight();
    ShelfSpace ways = judge.spaces().forKept(spot, posts, over, 0);
    double clear = Spare.fromObstacles(ways, kind, one.body().pose());
    if (isShort(clear)) {
      add(
          Code.IN_THE_WAY,
          one.id() + " is kept where it is " + by(clear) + " too near a post.",
          one.id());
    }
  }

  private void apart(Kept one, Kept other) {
    boolean shelf = one.slot().equals(other.slot());
    boolean firing = judge.apart().inFiring(one.lot().index(), other.lot().index());
    if (firing || shelf && judge.apart().onLayer(one.lot().index(), other.lot().index())) {
      String where = firing ? "in one firing" : "on one layer";
      String sentence = one.id() + " and " + other.id() + " have glazes that may not be " + where;
      add(Code.KEPT_APART, sentence + ".", one.id(), other.id());
    }
    BodyKind a = one.lot().kind().body();
    BodyKind b = other.lot().kind().body();
    double asked = gaps[one.body().kind()][other.body().kind()] + a.tolerance() + b.tolerance();
    boolean apart = shelf && !isOnePile(one, other);
    double spare = apart ? Spare.gap(a, one.body().pose(), b, other.body().pose()) - asked : 0;
    if (isShort(spare)) {
      add(
          Code.TOO_CLOSE,
          one.id() + " and " + other.id() + " are kept " + by(spare) + " too near to each other.",
          one.id(),
          other.id());
    }
  }

  /** What rests on or in each other has no gap to keep; the judge looks at how it rests. */
  private boolean isOnePile(Kept one, Kept other) {
    return lowest(one.id()).equals(lowest(other.id()));
  }

  private String lowest(String id) {
    Set<String> seen = new HashSet<>();
    String lowest = id;
    while (seen.add(lowest) && staying.pin(lowest) != null) {
      lowest = staying.pin(lowest).rest().on().orElse(lowest);
    }
    return lowest;
  }

  private void stack() {
    Sketch bare = staying.bare();
    Evaluation found = judge.judge(bare);
    String[] all = kept.stream().map(Kept::id).toArray(String[]::new);
    if (found.overloaded() > 0) {
      add(Code.TOO_HEAVY, "What is kept on one layer is more than its shelf carries.", all);
    } else if (found.stacking().isEmpty() && isTooHigh(bare)) {
      add(
          Code.NO_SUCH_LAYER,
          "The posts and shelves in stock do not make as many layers as the kept ones need.",
          all);
    } else if (found.stacking().isEmpty()) {
      add(
          Code.NO_STACK,
          "No posts in stock put the kept layers where all that is kept on them clears the shelf"
              + " above, posts, keep-outs and the zones its glazes forbid.",
          all);
    }
  }

  /** Whether so many layers cannot be built even when next to nothing stands on them. */
  private boolean isTooHigh(Sketch bare) {
    StackNeeds needs = new StackNeeds(bare.columns());
    for (int c = 0; c < bare.columns(); c++) {
      for (int l = 0; l < bare.levels(c); l++) {
        needs = needs.with(c, l, new StackNeeds.Level(0, new long[bare.places(c, l)]));
      }
    }
    return new StackFitter(judge.stand(), judge.stand().cupboard()).fit(needs).isEmpty();
  }

  private Spot spot(LayerSlot slot) {
    return judge.stand().spotsOf(slot.column()).get(slot.place());
  }

  /** A tenth of a micrometre more, for what is added up in doubles. */
  private static boolean isShort(double spare) {
    return spare < Foothold.LEAST_SPARE - 1e-4;
  }

  private String by(double spare) {
    long step = 100;
    long missing = Math.max(step, step * (long) Math.ceil(-spare * 1000 / step));
    return LengthText.write(new Length(missing), judge.stand().request().studio().unit());
  }

  private void add(Code code, String sentence, String... pieces) {
    problems.add(
        new KeptProblem(
            code,
            Stream.of(pieces).toList(),
            sentence,
            "Release " + (pieces.length == 1 ? pieces[0] : "one of them") + "."));
  }
}
