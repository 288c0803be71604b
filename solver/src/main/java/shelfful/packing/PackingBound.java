package shelfful.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import shelfful.geometry.Extent;
import shelfful.geometry.Tolerance;

/**
 * What no setting can exceed. Every figure is proven; none says that so much does fit.
 *
 * <ul>
 *   <li><b>Groemer and Oler.</b> Points at mutual distance at least d in a compact convex set of
 *       area A and perimeter P number at most 2A/(sqrt(3) d²) + P/(2d) + 1 (H. Groemer, "Über die
 *       Einlagerung von Kreisen in einen konvexen Bereich", Math. Z. 73, 1960; N. Oler, "An
 *       inequality in the geometry of numbers", Acta Math. 105, 1961). Applied to the centres of
 *       the discs inscribed in the bodies at one height: two of them keep the sum of the inscribed
 *       radii and the required gap apart, and each stays its inscribed radius and the room's
 *       clearance inside the room.
 *   <li><b>Area.</b> Grow every body by its tolerance and half the least clearance asked for
 *       between any two kinds: the grown bodies do not overlap, and they lie in the room moved
 *       outwards by that growth less the room's own clearance. Areas of grown convex bodies are
 *       Steiner's A + P t + pi t², taken with P never overstated.
 *   <li>Obstacles only take room away, so leaving them out keeps a bound true; the area bound
 *       counts those that surely lie in the room.
 * </ul>
 *
 * <p>Areas and perimeters of rooms are exact for one disc or a polygon, otherwise upper bounds from
 * a circumscribed polygon, which keeps all this true.
 */
public final class PackingBound {
  private PackingBound() {}

  /**
   * Groemer and Oler's bound for the number of points at mutual distance at least {@code d} in a
   * convex region.
   *
   * @param area of the region, mm², or anything larger
   * @param perimeter of the region, mm, or anything larger
   * @param d greater than 0, mm
   */
  public static double oler(double area, double perimeter, double d) {
    if (!(d > 0)) {
      throw new IllegalArgumentException("distance must be greater than 0 mm but is " + d);
    }
    return 2 / Math.sqrt(3) * area / (d * d) + perimeter / (2 * d) + 1;
  }

  /** The greatest number of bodies of one kind that could stand in a space; 0 if none can. */
  public static int most(ShelfSpace space, BodyKind kind, double clearance) {
    List<BodyKind> kinds = List.of(kind);
    double[][] table = {{clearance}};
    double most = Integer.MAX_VALUE;
    for (Slice slice : Slice.all(space, kinds, new Extents())) {
      Slice.Section section = slice.sections.get(0);
      Extent places = slice.places(List.of(section));
      if (places.empty() || slice.tooLong(section)) {
        return 0;
      }
      double distance = 2 * section.inner() + clearance + 2 * kind.tolerance();
      most = Math.min(most, oler(places.area(), places.perimeter(), distance));
      if (Tolerance.clearlyExceeds(distance, places.diameter())) {
        most = Math.min(most, 1);
      }
    }
    for (AreaBudget budget : areaBudgets(space, kinds, table)) {
      most = Math.min(most, budget.room() / budget.shares().get(0));
    }
    return (int) Math.floor(most + Tolerance.PROOF_SLACK * Math.max(1, most));
  }

  /**
   * The area limits of a space for kinds with these clearances, one for each height at which some
   * part begins. They hold for every content made of these kinds, so a whole load can add them up.
   */
  public static List<AreaBudget> areaBudgets(
      ShelfSpace space, List<BodyKind> kinds, double[][] clearance) {
    return areaBudgets(Slice.all(space, kinds, new Extents()), clearance);
  }

  /** Why the question surely has no setting, or empty if that cannot be said. */
  public static Optional<Cause> refusal(ShelfQuestion question) {
    return new EarlyRefusal(new Extents()).of(question);
  }

  static List<AreaBudget> areaBudgets(List<Slice> slices, double[][] clearance) {
    List<AreaBudget> budgets = new ArrayList<>();
    for (Slice slice : slices) {
      budgets.add(budget(slice, halfLeast(slice, clearance)));
    }
    return budgets;
  }

  private static double halfLeast(Slice slice, double[][] clearance) {
    double least = Double.POSITIVE_INFINITY;
    for (Slice.Section a : slice.sections) {
      for (Slice.Section b : slice.sections) {
        least = Math.min(least, clearance[a.kind()][b.kind()]);
      }
    }
    return least / 2;
  }

  private static AreaBudget budget(Slice slice, double halfClearance) {
    List<Double> shares = new ArrayList<>(Collections.nCopies(slice.kinds.size(), 0.0));
    double[] insets = new double[slice.space.rooms().size()];
    Arrays.fill(insets, Double.POSITIVE_INFINITY);
    for (Slice.Section section : slice.sections) {
      double growth = halfClearance + slice.kinds.get(section.kind()).tolerance();
      shares.set(section.kind(), section.shape().areaGrownBy(growth));
      for (int room = 0; room < insets.length; room++) {
        double inset = slice.insetGrown(slice.space.rooms().get(room), section, growth);
        insets[room] = Math.min(insets[room], inset);
      }
    }
    double least = Double.POSITIVE_INFINITY;
    for (int room = 0; room < insets.length; room++) {
      Room here = slice.space.rooms().get(room);
      least = Math.min(least, slice.area(here, insets[room], halfClearance));
    }
    return new AreaBudget(least, shares);
  }
}
