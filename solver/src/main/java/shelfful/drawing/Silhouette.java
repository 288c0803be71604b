package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/**
 * A piece from the side: its bands as steps, its lugs as blocks; in millimetres about its axis,
 * over its shelf.
 */
final class Silhouette {
  private Silhouette() {}

  /** An upright rectangle. */
  record Block(double left, double right, double bottom, double top) {
    Block moved(double across, double up) {
      return new Block(left + across, right + across, bottom + up, top + up);
    }
  }

  /** The corners of the bands' stepped outline, up the right side and down the left. */
  static List<double[]> steps(SetPiece piece, SideView side) {
    List<double[]> right = new ArrayList<>();
    List<double[]> corners = new ArrayList<>();
    for (Band band : piece.ware().bands()) {
      double half = half(band.outline(), piece, side);
      right.add(new double[] {half, band.from().millimetres()});
      right.add(new double[] {half, band.to().millimetres()});
    }
    corners.addAll(right);
    for (int i = right.size() - 1; i >= 0; i--) {
      corners.add(new double[] {-right.get(i)[0], right.get(i)[1]});
    }
    return corners;
  }

  static List<Block> lugs(SetPiece piece, SideView side) {
    List<Block> blocks = new ArrayList<>();
    for (Lug lug : piece.ware().lugs()) {
      double turn = Math.toRadians(lug.direction().degrees() + piece.placement().turn().degrees());
      double radius = lug.width().millimetres() / 2;
      double tip =
          (lug.reach().millimetres() - radius)
              * (side.fromFront() ? Math.cos(turn) : Math.sin(turn));
      blocks.add(
          new Block(
              Math.min(0, tip) - radius,
              Math.max(0, tip) + radius,
              lug.from().millimetres(),
              lug.to().millimetres()));
    }
    return blocks;
  }

  /**
   * Half of what an outline covers across the picture: the support of an ellipse in that direction.
   */
  private static double half(Outline outline, SetPiece piece, SideView side) {
    double turn = piece.placement().turn().radians() - (side.fromFront() ? 0 : Math.PI / 2);
    double width = outline.width().millimetres() / 2 * Math.cos(turn);
    double depth = outline.depth().millimetres() / 2 * Math.sin(turn);
    return Math.hypot(width, depth);
  }
}
