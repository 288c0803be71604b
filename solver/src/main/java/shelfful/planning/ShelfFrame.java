package shelfful.planning;

import shelfful.geometry.HalfPlane;
import shelfful.geometry.Pose;
import shelfful.kiln.ShelfPlace;

/**
 * Between the chamber's frame and a shelf's own. Shelves that are alike ask alike questions in
 * their own frames, so the left half's answer serves the right half.
 *
 * @param x of the shelf's origin in the chamber, mm
 * @param y of the shelf's origin in the chamber, mm
 * @param turn of the shelf about it, radians
 */
record ShelfFrame(double x, double y, double turn) {

  static ShelfFrame of(ShelfPlace place) {
    return new ShelfFrame(
        place.at().x().millimetres(), place.at().y().millimetres(), place.turn().radians());
  }

  double[] toShelf(double chamberX, double chamberY) {
    double dx = chamberX - x;
    double dy = chamberY - y;
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new double[] {dx * cos + dy * sin, dy * cos - dx * sin};
  }

  Pose toShelf(Pose inChamber) {
    double[] at = toShelf(inChamber.x(), inChamber.y());
    return new Pose(at[0], at[1], inChamber.angle() - turn);
  }

  HalfPlane toShelf(HalfPlane wall) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new HalfPlane(
        wall.nx() * cos + wall.ny() * sin,
        wall.ny() * cos - wall.nx() * sin,
        wall.offset() - wall.nx() * x - wall.ny() * y);
  }

  Pose toChamber(Pose inShelf) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Pose(
        x + inShelf.x() * cos - inShelf.y() * sin,
        y + inShelf.x() * sin + inShelf.y() * cos,
        inShelf.angle() + turn);
  }
}
