package shelfful.packing;

import shelfful.geometry.Contour;

/** A body of some kind tried at places where it does not stand. */
final class Ghost {
  final int kind;
  final double reach;
  final Contour[] parts;
  final Contour foot;
  double x;
  double y;

  Ghost(ShelfModel model, int kind) {
    this.kind = kind;
    this.reach = model.reach[kind];
    this.parts = Setting.contours(model.question.kinds().get(kind));
    this.foot = Contour.of(model.question.kinds().get(kind).foot());
  }

  void stand(double atX, double atY, double angle) {
    x = atX;
    y = atY;
    double cos = angle == 0 ? 1 : Math.cos(angle);
    double sin = angle == 0 ? 0 : Math.sin(angle);
    for (Contour part : parts) {
      part.place(x, y, cos, sin);
    }
    foot.place(x, y, cos, sin);
  }
}
