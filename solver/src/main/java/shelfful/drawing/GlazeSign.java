package shelfful.drawing;

import java.util.List;
import java.util.Optional;

/**
 * How one glaze is told on paper: by its letter and its hatching, and by a light colour where there
 * is colour.
 *
 * @param letter short enough to stand on a piece; empty text for ware that is not glazed
 * @param name as the potter says it
 * @param hatch its filling, or none
 * @param tint behind the hatching
 */
record GlazeSign(String letter, String name, Optional<Hatch> hatch, Ink tint) {
  static final GlazeSign NOT_GLAZED = new GlazeSign("", "not glazed", Optional.empty(), Ink.WHITE);

  private static final Pen DRAWN = Pen.solid(0.16, Ink.grey(100));
  private static final Pen DOTTED = Pen.solid(0.42, Ink.grey(90));

  /** The hatching of a convex shape. */
  void fill(SheetDraft sheet, List<Spot> convex) {
    sheet.add(new Mark.Path(convex, true, Look.filled(tint)));
    hatch.ifPresent(
        one -> {
          List<Mark.Hatching.Line> strokes = one.strokes(convex);
          if (!strokes.isEmpty()) {
            boolean dots = one == Hatch.DOTS || one == Hatch.TIGHT_DOTS;
            sheet.add(new Mark.Hatching(strokes, dots ? DOTTED : DRAWN));
          }
        });
  }

  /** A small sample, for keys. */
  void sample(SheetDraft sheet, Box box) {
    fill(
        sheet,
        List.of(
            new Spot(box.left(), box.bottom()),
            new Spot(box.right(), box.bottom()),
            new Spot(box.right(), box.top()),
            new Spot(box.left(), box.top())));
    sheet.box(box, Look.outlined(Pen.THIN));
  }
}
