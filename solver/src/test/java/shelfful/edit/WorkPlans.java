package shelfful.edit;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import shelfful.fixture.Loads;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Plans to work on, and seeded things to do to them. */
final class WorkPlans {
  private static final List<Load> LOADS =
      List.of(
          Loads.roundFull(),
          Loads.halves(),
          Loads.tenSided(),
          Loads.ovalWithPlatters(),
          Loads.frontLoader(),
          Loads.touchingBisque());

  private WorkPlans() {}

  /** Loads with discs, handles, ovals, catchers, posts, cut shelves and shelves side by side. */
  static List<Load> loads() {
    return LOADS;
  }

  /** Those, and one with piles. */
  static List<Load> withPiles() {
    return Stream.concat(LOADS.stream(), Stream.of(Loads.piles())).toList();
  }

  /** Some place near where a piece stands, in any direction. */
  static Placement nudged(Placement from, double millimetres, SplittableRandom chance) {
    Point at =
        new Point(
            from.at().x().plus(Length.ofMillimetres(between(-millimetres, millimetres, chance))),
            from.at().y().plus(Length.ofMillimetres(between(-millimetres, millimetres, chance))));
    Angle turn = chance.nextBoolean() ? from.turn() : new Angle(chance.nextInt(360_000));
    return from.movedTo(at, turn);
  }

  static double between(double least, double most, SplittableRandom chance) {
    return least + (most - least) * chance.nextDouble();
  }

  static <T> T one(List<T> things, SplittableRandom chance) {
    return things.get(chance.nextInt(things.size()));
  }

  /** Some edit that fits the plan, of every kind. */
  static Edit edit(WorkPlan plan, SplittableRandom chance) {
    while (true) {
      Edit edit = candidate(plan, chance);
      if (edit.fits(plan)) {
        return edit;
      }
    }
  }

  private static Edit candidate(WorkPlan plan, SplittableRandom chance) {
    List<Layer> layers = plan.load().layers();
    Layer layer = one(layers, chance);
    List<Placement> standing = layers.stream().flatMap(l -> l.placements().stream()).toList();
    if (standing.isEmpty()) {
      return new Edit.LockLayer(layer.id(), !plan.isLocked(layer.id()));
    }
    Placement piece = one(standing, chance);
    Placement nudged = nudged(piece, 30, chance);
    return switch (chance.nextInt(10)) {
      case 0, 1, 2 -> new Edit.MovePiece(piece.pieceId(), nudged.at(), nudged.turn());
      case 3 -> new Edit.TurnPiece(piece.pieceId(), nudged.turn());
      case 4 -> new Edit.SendToLayer(layer.id(), nudged);
      case 5 -> new Edit.TakeOut(out(piece.pieceId()));
      case 6 -> putIn(plan, layer, nudged, chance);
      case 7 -> new Edit.PinPiece(piece.pieceId(), chance.nextBoolean());
      case 8 -> new Edit.LockLayer(layer.id(), chance.nextInt(4) == 0);
      default -> ofTheWhole(plan, piece, chance);
    };
  }

  private static Edit ofTheWhole(WorkPlan plan, Placement piece, SplittableRandom chance) {
    return switch (chance.nextInt(6)) {
      case 0 -> new Edit.UnpinAll();
      case 1 -> new Edit.LockKiln(chance.nextInt(4) == 0);
      case 2 -> new Edit.TakeRemedy(Placing.out(plan.load(), out(piece.pieceId())));
      default -> new Edit.AdoptPlan(plan.load());
    };
  }

  static LeftOut out(String pieceId) {
    return new LeftOut(
        pieceId, LeftOut.Reason.TAKEN_OUT, "It was taken out by hand.", "Put it in again.");
  }

  private static Edit putIn(WorkPlan plan, Layer layer, Placement near, SplittableRandom chance) {
    if (plan.load().leftOut().isEmpty()) {
      return new Edit.UnpinAll();
    }
    String id = one(plan.load().leftOut(), chance).pieceId();
    return new Edit.PutIn(layer.id(), new Placement(id, near.at(), near.turn(), near.onCatcher()));
  }
}
