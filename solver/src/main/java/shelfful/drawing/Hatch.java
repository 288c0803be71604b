package shelfful.drawing;

import java.util.List;

/**
 * The fillings that tell glazes apart without colour. Neighbours in the list differ in direction or
 * in kind, so the first few glazes of a load are the easiest to tell apart.
 */
enum Hatch {
  RISING(HatchFamily.lines(45, 2.0)),
  DOTS(HatchFamily.dots(0, 2.0)),
  LEVEL(HatchFamily.lines(0, 1.9)),
  FALLING(HatchFamily.lines(135, 2.0)),
  SQUARES(HatchFamily.lines(0, 2.8), HatchFamily.lines(90, 2.8)),
  UPRIGHT(HatchFamily.lines(90, 1.9)),
  DIAMONDS(HatchFamily.lines(45, 3.0), HatchFamily.lines(135, 3.0)),
  STITCHES(HatchFamily.dashes(0, 1.8)),
  TIGHT_RISING(HatchFamily.lines(45, 1.0)),
  RAIN(HatchFamily.dashes(90, 1.8)),
  TIGHT_DOTS(HatchFamily.dots(45, 1.1)),
  TRIANGLES(HatchFamily.lines(0, 3.0), HatchFamily.lines(60, 3.0), HatchFamily.lines(120, 3.0));

  private final List<HatchFamily> families;

  Hatch(HatchFamily... families) {
    this.families = List.of(families);
  }

  /** The strokes that fill a convex shape, kept a little inside it. */
  List<Mark.Hatching.Line> strokes(List<Spot> convex) {
    return families.stream().flatMap(family -> family.strokes(convex).stream()).toList();
  }
}
