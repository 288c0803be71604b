package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.load.Layer;

/** Words beside the kiln's side view: each layer with its height, clear height, shelf and posts. */
record SideLabels(Setting setting, SideView side, LengthWords words) {
  private static final double PITCH = 3.5;
  private static final double LEAD = 6;
  private static final double BETWEEN = 1.2;

  void draw(SheetDraft sheet, KilnSideDrawer.Frame frame, Box room) {
    List<Layer> left = new ArrayList<>();
    List<Layer> right = new ArrayList<>();
    List<Layer> inner = new ArrayList<>();
    for (Layer layer : setting.layers()) {
      (isAtEdge(layer, false) ? right : isAtEdge(layer, true) ? left : inner).add(layer);
    }
    draw(sheet, frame, room, left, true);
    draw(sheet, frame, room, right, false);
    inner.forEach(layer -> tag(sheet, frame, layer));
  }

  /**
   * Whether no other shelf reaches further to that side at any height this one could be labelled
   * across.
   */
  private boolean isAtEdge(Layer layer, boolean left) {
    Reach own = side.across(setting.contour(layer));
    return setting.layers().stream()
        .map(other -> side.across(setting.contour(other)))
        .allMatch(
            other ->
                left
                    ? other.to() > own.from() - 1 && other.middle() > own.from()
                    : other.middle() < own.to());
  }

  private void draw(
      SheetDraft sheet, KilnSideDrawer.Frame frame, Box room, List<Layer> layers, boolean left) {
    List<Layer> downwards =
        layers.stream()
            .sorted(Comparator.comparing(Layer::z).reversed().thenComparing(Layer::id))
            .toList();
    if (layers.size() * (PITCH + BETWEEN) > frame.chamber().height() + 6) {
      layers.forEach(layer -> tag(sheet, frame, layer));
      return;
    }
    int lines = downwards.size() * (3 * PITCH + BETWEEN) <= frame.chamber().height() + 6 ? 3 : 1;
    double block = lines * PITCH + BETWEEN;
    double lowest = frame.floor().y() + 3 - block * downwards.size();
    double y = room.top() - 1;
    for (Layer layer : downwards) {
      double wished = frame.at(0, layer.z().millimetres()).y() - block + PITCH;
      double from = Math.max(y, Math.min(wished, lowest));
      label(sheet, frame, layer, from, left, lines, left ? room.left() : room.right());
      y = from + block;
      lowest += block;
    }
  }

  private void label(
      SheetDraft sheet,
      KilnSideDrawer.Frame frame,
      Layer layer,
      double top,
      boolean left,
      int lines,
      double edge) {
    Reach reach = side.across(setting.contour(layer));
    double middle = layer.z().millimetres() - setting.shelf(layer).thickness().millimetres() / 2;
    Spot shelf = frame.at(left ? reach.from() : reach.to(), middle);
    double wall = left ? frame.chamber().left() : frame.chamber().right();
    Spot end = new Spot(wall + (left ? -LEAD : LEAD), top + PITCH / 2);
    sheet.add(
        new Mark.Path(
            List.of(shelf, new Spot(wall + (left ? -1.5 : 1.5), shelf.y()), end),
            false,
            Look.outlined(Pen.solid(0.15, Ink.MIDDLE))));
    double x = end.x() + (left ? -1 : 1);
    double most = Math.abs(edge - x);
    Anchor anchor = left ? Anchor.END : Anchor.START;
    List<String> told = told(layer, lines);
    for (int i = 0; i < told.size(); i++) {
      TextStyle style = i == 0 ? TextStyle.SMALL_STRONG : TextStyle.SMALL;
      sheet.text(new Spot(x, top + (i + 0.75) * PITCH), told.get(i), style, anchor, most);
    }
  }

  private List<String> told(Layer layer, int lines) {
    String posts = "posts " + new PostWords(setting, words).lengths(setting.under(layer));
    boolean carried = !setting.under(layer).isEmpty();
    if (lines == 1) {
      return List.of(layer.id() + (carried ? "  " + posts : ""));
    }
    String clear =
        "clear "
            + words.bare(setting.clearHeight(layer))
            + ", shelf "
            + words.bare(setting.shelf(layer).thickness());
    return List.of(
        layer.id() + "  top at " + words.bare(layer.z()), clear, carried ? posts : "on the floor");
  }

  /**
   * A layer between others carries its name on its shelf, where it is free; its figures are in the
   * table.
   */
  private void tag(SheetDraft sheet, KilnSideDrawer.Frame frame, Layer layer) {
    Reach reach = side.across(setting.contour(layer));
    Spot at = frame.at(reach.middle(), layer.z().millimetres()).plus(0, 1);
    double half = TextStyle.SMALL_STRONG.wording().width(layer.id()) / 2 + 0.6;
    Box box = new Box(at.x() - half, at.y() - 2.6, at.x() + half, at.y() + 0.9);
    if (sheet.isFree(box) && half < 12) {
      sheet.box(box, Look.of(Pen.THIN, Ink.WHITE));
      sheet.text(at, layer.id(), TextStyle.SMALL_STRONG, Anchor.MIDDLE, 2 * half);
    }
  }
}
