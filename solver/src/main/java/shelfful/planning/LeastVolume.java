package shelfful.planning;

import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.ware.Band;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;
import shelfful.ware.Outline;
import shelfful.ware.Part;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * The volume that a piece has to itself however it is set, in cubic millimetres: a proof of how
 * many a kiln cannot hold. Alone and in pairs it is all of the piece's bands; nested, the slice at
 * its rim that rises over the piece below, as high as the increment; inside another, nothing.
 */
final class LeastVolume {
  private final LoadRequest request;
  private final FiringDoor door;
  private final TowerMaker towers;

  LeastVolume(LoadRequest request) {
    this.request = request;
    this.door = new FiringDoor(request);
    this.towers = new TowerMaker(request);
  }

  double of(Piece piece) {
    Form form = door.form(piece);
    StandingWare ware = door.standing(piece);
    double whole = over(ware, Length.ZERO);
    if (piece.part() != Part.POT || !towers.mayPile(piece)) {
      return whole;
    }
    if (mayBeInside(form)) {
      return 0;
    }
    BisqueSetting setting = form.bisque();
    double factor = form.shrinkage().factor(form.measuredAt(), request.firing().kind().goesIn());
    return setting
        .piled()
        .map(piled -> ware.height().minus(piled.increment().scaledUp(factor)))
        .map(from -> Math.min(whole, over(ware, from)))
        .orElse(whole);
  }

  private boolean mayBeInside(Form form) {
    return request.studio().forms().stream()
        .flatMap(other -> other.bisque().hollow().stream())
        .anyMatch(hollow -> hollow.formIds().contains(form.id()));
  }

  /** The volume of the bands over a height. */
  private static double over(StandingWare ware, Length from) {
    double volume = 0;
    for (Band band : ware.bands()) {
      Length bottom = Length.longer(band.from(), from);
      double high = Math.max(0, band.to().minus(bottom).millimetres());
      volume += high * area(band.outline());
    }
    return volume;
  }

  private static double area(Outline outline) {
    return Math.PI / 4 * outline.width().millimetres() * outline.depth().millimetres();
  }
}
