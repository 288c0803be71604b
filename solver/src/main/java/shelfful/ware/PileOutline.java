package shelfful.ware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * Pieces set on and in each other, as one body: at every height the largest outline there, every
 * lug where it is, the height of the highest, the mass of all. Where outlines differ in kind the
 * body is as wide and as deep as the widest and the deepest, so it may be larger than the pieces
 * together, never smaller.
 */
public final class PileOutline {
  private PileOutline() {}

  /**
   * The body of some pieces about one axis, turned alike.
   *
   * @param pieces as they lie, heights over the shelf; the first stands on it
   */
  public static StandingWare of(List<StandingWare> pieces) {
    Length height = Length.ZERO;
    Mass mass = Mass.ZERO;
    List<Lug> lugs = new ArrayList<>();
    for (StandingWare piece : pieces) {
      height = Length.longer(height, piece.height());
      mass = mass.plus(piece.mass());
      piece.lugs().forEach(lug -> add(lugs, lug));
    }
    return new StandingWare(pieces.get(0).foot(), height, bands(pieces), lugs, mass);
  }

  private static List<Band> bands(List<StandingWare> pieces) {
    TreeSet<Length> heights = new TreeSet<>();
    for (StandingWare piece : pieces) {
      piece.bands().forEach(band -> heights.add(band.from()));
      piece.bands().forEach(band -> heights.add(band.to()));
    }
    List<Band> bands = new ArrayList<>();
    Length from = heights.first();
    for (Length to : heights.tailSet(from, false)) {
      Optional<Outline> widest = widest(pieces, from, to);
      if (widest.isPresent()) {
        add(bands, new Band(widest.get(), from, to));
      }
      from = to;
    }
    return bands;
  }

  private static Optional<Outline> widest(List<StandingWare> pieces, Length from, Length to) {
    return pieces.stream()
        .flatMap(piece -> piece.bands().stream())
        .filter(band -> !band.from().isLongerThan(from) && !to.isLongerThan(band.to()))
        .map(Band::outline)
        .reduce(PileOutline::larger);
  }

  /** An outline that covers both. */
  private static Outline larger(Outline one, Outline other) {
    if (covers(one, other)) {
      return one;
    }
    if (covers(other, one)) {
      return other;
    }
    return new Outline.Oval(
        Length.longer(one.width(), other.width()), Length.longer(one.depth(), other.depth()));
  }

  private static boolean covers(Outline one, Outline other) {
    return !other.width().isLongerThan(one.width()) && !other.depth().isLongerThan(one.depth());
  }

  private static void add(List<Band> bands, Band next) {
    int last = bands.size() - 1;
    if (last >= 0
        && bands.get(last).outline().equals(next.outline())
        && bands.get(last).to().equals(next.from())) {
      bands.set(last, new Band(next.outline(), bands.get(last).from(), next.to()));
    } else {
      bands.add(next);
    }
  }

  /** Handles over each other that touch or overlap are one handle to the neighbours. */
  private static void add(List<Lug> lugs, Lug next) {
    for (int i = 0; i < lugs.size(); i++) {
      Lug lug = lugs.get(i);
      boolean over =
          lug.direction().equals(next.direction())
              && lug.reach().equals(next.reach())
              && lug.width().equals(next.width())
              && !next.from().isLongerThan(lug.to())
              && !lug.from().isLongerThan(next.to());
      if (over) {
        Length from = next.from().isLongerThan(lug.from()) ? lug.from() : next.from();
        Length to = Length.longer(lug.to(), next.to());
        lugs.set(i, new Lug(lug.name(), lug.direction(), lug.reach(), lug.width(), from, to));
        return;
      }
    }
    lugs.add(next);
  }
}
