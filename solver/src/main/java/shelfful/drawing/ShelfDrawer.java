package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.KeepOut;
import shelfful.kiln.ShelfOutline;
import shelfful.load.Layer;
import shelfful.measure.Point;

/**
 * One shelf from above at the largest plain scale, with all that is in the way and all that stands
 * on it.
 */
final class ShelfDrawer {
  /**
   * How much of the kiln round the shelf is shown, in millimetres; the wall if it is no further
   * than this.
   */
  private static final double WALL_NEAR = 60;

  private static final double SURROUNDINGS = 25;
  private static final double WALL_LINE = 3;

  /** The width of three figures beside a shelf, in millimetres of paper. */
  static final double EDGE_FIGURE = 8;

  /** The height of one above it. */
  static final double EDGE_FIGURE_ABOVE = 4;

  private static final Pen KEEP_OUT = Pen.solid(0.25, Ink.MIDDLE);
  private static final Ink SLAB = Ink.grey(246);

  private final Setting setting;
  private final GlazePalette palette;
  private final SheetDraft sheet;
  private final Layer layer;
  private final List<PostMark> posts;

  ShelfDrawer(
      Setting setting, GlazePalette palette, SheetDraft sheet, Layer layer, List<PostMark> posts) {
    this.setting = setting;
    this.palette = palette;
    this.sheet = sheet;
    this.layer = layer;
    this.posts = posts;
  }

  /**
   * Draws the shelf at the top of a box, in its middle; returns the view it chose and the box it
   * used.
   */
  Drawn draw(Box whole, ShelfPositions positions) {
    Box room = positions.fromEdges() ? inside(whole) : whole;
    Reach across = shown(true);
    Reach deep = shown(false);
    double ratio = ScaleChoice.toFit(across.length(), deep.length(), room.width(), room.height());
    Spot centre = new Spot(room.centre().x(), room.top() + deep.length() / ratio / 2);
    PlanView view =
        new PlanView(ratio, centre.plus(-across.middle() / ratio, deep.middle() / ratio));
    Spot far = view.at(across.from(), deep.to());
    Spot near = view.at(across.to(), deep.from());
    Box used = new Box(far.x(), far.y(), near.x(), near.y());
    draw(view, used, setting.on(layer), positions);
    return new Drawn(view, used);
  }

  /** Draws what a view shows within a box, and of what stands on the layer these pieces. */
  void draw(PlanView view, Box used, List<SetPiece> pieces, ShelfPositions positions) {
    sheet.shows(view);
    surroundings(view, new ViewClip(used));
    slab(view);
    PlaceGrid grid = new PlaceGrid(sheet, view, setting.contour(layer), positions, used);
    grid.lines();
    beside(view, new ViewClip(used));
    keepOuts(view, new ViewClip(used));
    List<Box> ware = ware(view);
    posts.stream().filter(PostMark::standsOnShelf).forEach(post -> post.draw(sheet, view, ware));
    new PieceDrawer(sheet, view, palette).draw(pieces);
    posts.stream()
        .filter(post -> !post.standsOnShelf())
        .forEach(post -> post.draw(sheet, view, ware));
    keepOutNames(view, used);
    grid.figures(bodies(view));
  }

  /** Leaves room for the figures along a rectangle's edges. */
  private static Box inside(Box whole) {
    return new Box(
        whole.left() + EDGE_FIGURE, whole.top() + EDGE_FIGURE_ABOVE, whole.right(), whole.bottom());
  }

  /** What was drawn where. */
  record Drawn(PlanView view, Box box) {}

  /**
   * The shelf and whatever reaches past it, with some of what lies around, but nothing beyond the
   * walls.
   */
  private Reach shown(boolean alongX) {
    Reach shelf = along(setting.contour(layer), alongX);
    double from = shelf.from();
    double to = shelf.to();
    for (SetPiece piece : setting.on(layer)) {
      double at = alongX ? piece.x() : piece.y();
      double half = farthest(piece);
      from = Math.min(from, at - half);
      to = Math.max(to, at + half);
    }
    Reach wall = along(Contours.of(setting.kiln().chamber().floorPlan()), alongX);
    return new Reach(from - surroundings(from - wall.from()), to + surroundings(wall.to() - to));
  }

  static double surroundings(double toWall) {
    return toWall > WALL_NEAR ? SURROUNDINGS : Math.max(0, toWall + WALL_LINE);
  }

  private static double farthest(SetPiece piece) {
    double body =
        Math.max(piece.widest().width().millimetres(), piece.widest().depth().millimetres());
    double lug =
        piece.ware().lugs().stream().mapToDouble(one -> one.reach().millimetres()).max().orElse(0);
    return Math.max(body / 2, lug);
  }

  static Reach along(List<Point> corners, boolean alongX) {
    return alongX ? Reach.alongX(corners) : Reach.alongY(corners);
  }

  private void surroundings(PlanView view, ViewClip clip) {
    List<Point> own = setting.contour(layer);
    setting.layers().stream()
        .map(setting::contour)
        .distinct()
        .filter(other -> !Contact.overlap(own, other))
        .forEach(other -> runs(view, clip, other, Pen.NEIGHBOUR));
    runs(view, clip, Contours.of(setting.kiln().chamber().floorPlan()), Pen.WALL);
  }

  /** What of the ware beside it reaches over the joint, or nearly. */
  private void beside(PlanView view, ViewClip clip) {
    for (Layer other : setting.setWith(layer)) {
      for (SetPiece piece : setting.on(other)) {
        Slice.lugs(piece).forEach(lug -> runs(view, clip, lug.corners(), Pen.NEIGHBOUR));
        runs(view, clip, Slice.widest(piece).corners(), Pen.NEIGHBOUR);
      }
    }
  }

  private void runs(PlanView view, ViewClip clip, List<Point> closed, Pen pen) {
    for (List<Spot> run : clip.runs(closed.stream().map(view::at).toList())) {
      sheet.add(new Mark.Path(run, false, Look.outlined(pen)));
    }
  }

  private void slab(PlanView view) {
    Look look = Look.of(Pen.solid(0.35, Ink.BLACK), SLAB);
    if (setting.shelf(layer).outline() instanceof ShelfOutline.FullRound round) {
      Spot centre = view.at(setting.place(layer).at());
      sheet.add(new Mark.Circle(centre, view.onPaper(round.diameter().millimetres() / 2), look));
    } else {
      List<Spot> corners = setting.contour(layer).stream().map(view::at).toList();
      sheet.add(new Mark.Path(corners, true, look));
    }
  }

  private void keepOuts(PlanView view, ViewClip clip) {
    for (KeepOut keepOut : setting.inTheWay(layer)) {
      List<Spot> corners = clip.convex(new Shapes(view).corners(keepOut));
      if (corners.size() > 2) {
        sheet.add(new Mark.Path(corners, true, Look.of(KEEP_OUT, Ink.WHITE)));
        List<Mark.Hatching.Line> strokes = Hatch.TIGHT_RISING.strokes(corners);
        if (!strokes.isEmpty()) {
          sheet.add(new Mark.Hatching(strokes, KEEP_OUT));
        }
      }
    }
  }

  /** Names where there is white paper for them; the note under the plan names them all. */
  private void keepOutNames(PlanView view, Box used) {
    for (KeepOut keepOut : setting.inTheWay(layer)) {
      List<Spot> corners = new ViewClip(used).convex(new Shapes(view).corners(keepOut));
      if (corners.size() > 2) {
        new FreeLabel(sheet, used, bodies(view)).beside(Box.round(corners), keepOut.name());
      }
    }
  }

  private List<Box> bodies(PlanView view) {
    List<Box> boxes = new ArrayList<>(ware(view));
    posts.forEach(
        post -> boxes.add(Box.about(view.at(post.at()), view.onPaper(post.across() / 2))));
    return boxes;
  }

  private List<Box> ware(PlanView view) {
    return setting.on(layer).stream()
        .map(piece -> Box.about(view.at(piece.placement().at()), view.onPaper(farthest(piece))))
        .toList();
  }
}
