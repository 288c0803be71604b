package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.load.Layer;
import shelfful.load.StandingPost;
import shelfful.measure.Length;

/**
 * The whole kiln from the side, to scale: walls, shelves, posts and the ware as plain silhouettes.
 */
final class KilnSideDrawer {
  private static final double LABELS = 43;
  private static final Ink POST = Ink.grey(205);

  private final Setting setting;
  private final GlazePalette palette;
  private final SheetDraft sheet;
  private final SideView side;

  KilnSideDrawer(Setting setting, GlazePalette palette, SheetDraft sheet) {
    this.setting = setting;
    this.palette = palette;
    this.sheet = sheet;
    this.side = SideView.of(setting);
  }

  /** Where the kiln lies on the sheet: the middle of its floor, and its scale. */
  record Frame(Spot floor, double ratio, Box chamber) {
    Spot at(double across, double up) {
      return floor.plus(across / ratio, -up / ratio);
    }
  }

  /** Draws the kiln in a box and its labels beside it; returns the y it ends at. */
  double draw(Box room, LengthWords words) {
    Reach walls = side.across(Contours.of(setting.kiln().chamber().floorPlan()));
    double height = setting.kiln().chamber().height().millimetres();
    double ratio =
        ScaleChoice.toFit(walls.length(), height, room.width() - 2 * LABELS, room.height() - 7);
    Spot floor = new Spot(room.centre().x(), room.top() + height / ratio);
    Box chamber =
        new Box(
            floor.x() + walls.from() / ratio,
            room.top(),
            floor.x() + walls.to() / ratio,
            floor.y());
    Frame frame = new Frame(floor, ratio, chamber);
    kiln(frame);
    new SideLabels(setting, side, words, sheet, frame).draw(room);
    String told =
        ScaleChoice.words(ratio) + ", " + side.words() + "; all figures in " + words.unitWord();
    sheet.text(
        new Spot(room.centre().x(), floor.y() + 5),
        told,
        TextStyle.QUIET,
        Anchor.MIDDLE,
        room.width());
    return floor.y() + 6;
  }

  /** The walls and what stands between them, without words. */
  void kiln(Frame frame) {
    sheet.box(frame.chamber(), Look.of(Pen.solid(0.8, Ink.MIDDLE), Ink.WHITE));
    contents(frame);
    setting.layers().forEach(layer -> shelf(frame, layer));
  }

  /** Far things first, so that near ones cover them. */
  private void contents(Frame frame) {
    record Thing(double depth, Runnable drawing) {}
    List<Thing> things = new ArrayList<>();
    for (StandingPost post : setting.load().posts()) {
      things.add(new Thing(side.depth(post.at()), () -> post(frame, post)));
    }
    for (Layer layer : setting.layers()) {
      for (SetPiece piece : setting.on(layer)) {
        things.add(new Thing(side.depth(piece.placement().at()), () -> piece(frame, layer, piece)));
      }
    }
    things.sort(Comparator.comparingDouble(thing -> -thing.depth()));
    things.forEach(thing -> thing.drawing().run());
  }

  private void post(Frame frame, StandingPost post) {
    double half = setting.across(post) / 2;
    double at = side.across(post.at());
    double base = post.base().millimetres();
    for (Length length : setting.lengths(post)) {
      double top = base + length.millimetres();
      block(frame, new Silhouette.Block(at - half, at + half, base, top), Look.of(Pen.THIN, POST));
      base = top;
    }
  }

  private void piece(Frame frame, Layer layer, SetPiece piece) {
    double at = side.across(piece.placement().at());
    double z = layer.z().millimetres();
    Look look = Look.of(Pen.THIN, palette.of(piece).tint());
    for (Silhouette.Block lug : Silhouette.lugs(piece, side)) {
      block(frame, lug.moved(at, z), look);
    }
    List<Spot> corners =
        Silhouette.steps(piece, side).stream()
            .map(corner -> frame.at(at + corner[0], z + corner[1]))
            .toList();
    sheet.add(new Mark.Path(corners, true, look));
  }

  private void shelf(Frame frame, Layer layer) {
    Reach reach = side.across(setting.contour(layer));
    double top = layer.z().millimetres();
    double bottom = top - setting.shelf(layer).thickness().millimetres();
    block(
        frame,
        new Silhouette.Block(reach.from(), reach.to(), bottom, top),
        Look.of(Pen.THIN, Ink.grey(90)));
  }

  private void block(Frame frame, Silhouette.Block block, Look look) {
    Spot upper = frame.at(block.left(), block.top());
    Spot lower = frame.at(block.right(), block.bottom());
    sheet.box(new Box(upper.x(), upper.y(), lower.x(), lower.y()), look);
  }
}
