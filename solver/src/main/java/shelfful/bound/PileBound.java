package shelfful.bound;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.kiln.Shelf;
import shelfful.planning.KilnPlan;
import shelfful.planning.WareOnOffer.Offer;

/**
 * The bound of a load in which pieces may rest on and in each other, where limits of areas on
 * shelves prove nothing: the volume that every piece has to itself adds up to no more than the room
 * of the chamber inside of the clearances, and the mass to no more than all shelves carry.
 */
final class PileBound {
  /** The judge reads distances a hair short; so much more volume than room may pass, as a share. */
  private static final double SLACK = 1e-3;

  private final List<Offer> offers;
  private final double room;
  private final double carried;

  PileBound(BoundTask task) {
    this.offers = task.pieces().stream().map(PieceSizes::offer).toList();
    double wall = task.studio().rules().clearances().wareToWall().millimetres();
    double floor =
        ConvexPolygon.everywhere()
            .within(
                KilnPlan.chamber(task.kiln().chamber().floorPlan()),
                wall - PieceSizes.SLACK,
                Side.WALL)
            .area();
    this.room = floor * Math.max(0, task.ceiling() - task.offFloor()) / 1000.0 * (1 + SLACK);
    this.carried = task.studio().shelves().stream().mapToDouble(PileBound::carries).sum();
  }

  private static double carries(Shelf shelf) {
    return shelf
        .massLimit()
        .map(limit -> (double) limit.grams() * shelf.count())
        .orElse(shelf.count() > 0 ? Double.POSITIVE_INFINITY : 0);
  }

  double list(ToDoubleFunction<Offer> worth) {
    return offers.stream().mapToDouble(offer -> worth.applyAsDouble(offer) * offer.count()).sum();
  }

  /** No load is worth more. */
  double most(ToDoubleFunction<Offer> worth) {
    return Math.min(byVolume(worth), byMass(worth));
  }

  private double byVolume(ToDoubleFunction<Offer> worth) {
    return filled(worth, Offer::leastVolume, room);
  }

  private double byMass(ToDoubleFunction<Offer> worth) {
    return filled(worth, Offer::grams, carried);
  }

  LimitCause cause() {
    double list = list(offer -> 1);
    if (most(offer -> 1) >= list) {
      return LimitCause.LIST;
    }
    return byMass(offer -> 1) < byVolume(offer -> 1) ? LimitCause.MASS : LimitCause.VOLUME;
  }

  /**
   * As much worth as goes into a room when the last piece may be cut: no whole ones are worth more.
   */
  private double filled(ToDoubleFunction<Offer> worth, ToDoubleFunction<Offer> size, double most) {
    double left = most;
    double filled = 0;
    List<Offer> densest =
        offers.stream()
            .sorted(
                Comparator.comparingDouble(
                    offer -> size.applyAsDouble(offer) / worth.applyAsDouble(offer)))
            .toList();
    for (Offer offer : densest) {
      double each = size.applyAsDouble(offer);
      double taken = each > 0 ? Math.min(offer.count(), left / each) : offer.count();
      filled += taken * worth.applyAsDouble(offer);
      left -= taken * each;
    }
    return filled;
  }
}
