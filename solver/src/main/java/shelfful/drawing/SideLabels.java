package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.load.Layer;

/**
 * Words beside the kiln's side view: each layer with its height, clear height, shelf and posts.
 * Layers at the left or right edge of the picture are labelled there; those between others carry
 * their name on the shelf.
 */
final class SideLabels {
  private static final double PITCH = 3.5;
  private static final double BETWEEN = 1.2;
  private static final double LEAD = 6;
  private static final double OVERHANG = 6;

  private final Setting setting;
  private final SideView side;
  private final LengthWords words;
  private final SheetDraft sheet;
  private final KilnSideDrawer.Frame frame;

  SideLabels(
      Setting setting,
      SideView side,
      LengthWords words,
      SheetDraft sheet,
      KilnSideDrawer.Frame frame) {
    this.setting = setting;
    this.side = side;
    this.words = words;
    this.sheet = sheet;
    this.frame = frame;
  }

  void draw(Box room) {
    List<Layer> left = new ArrayList<>();
    List<Layer> right = new ArrayList<>();
    List<Layer> inner = new ArrayList<>();
    for (Layer layer : setting.layers()) {
      (isAtRight(layer) ? right : isAtLeft(layer) ? left : inner).add(layer);
    }
    beside(left, true, room);
    beside(right, false, room);
    inner.forEach(this::tag);
  }

  private Reach reach(Layer layer) {
    return side.across(setting.contour(layer));
  }

  /** Whether no shelf has its middle further right than this one reaches. */
  private boolean isAtRight(Layer layer) {
    double edge = reach(layer).to();
    return setting.layers().stream().allMatch(other -> reach(other).middle() < edge);
  }

  private boolean isAtLeft(Layer layer) {
    double edge = reach(layer).from();
    return setting.layers().stream().allMatch(other -> reach(other).middle() > edge);
  }

  private void beside(List<Layer> layers, boolean left, Box room) {
    double height = frame.chamber().height() + OVERHANG;
    if (layers.size() * (PITCH + BETWEEN) > height) {
      layers.forEach(this::tag);
      return;
    }
    int lines = lines(layers.size(), height);
    double block = lines * PITCH + BETWEEN;
    double lowest = frame.floor().y() + OVERHANG / 2 - block * layers.size();
    double y = room.top() - 1;
    for (Layer layer : downwards(layers)) {
      double wished = frame.at(0, layer.z().millimetres()).y() - block + PITCH;
      double top = Math.max(y, Math.min(wished, lowest));
      Spot end = lead(layer, top, left);
      double most = left ? end.x() - room.left() : room.right() - end.x();
      label(told(layer, lines), end, left ? Anchor.END : Anchor.START, most);
      y = top + block;
      lowest += block;
    }
  }

  /** As much about each layer as there is room for. */
  private static int lines(int layers, double height) {
    return layers * (4 * PITCH + BETWEEN) <= height
        ? 4
        : layers * (3 * PITCH + BETWEEN) <= height ? 3 : 1;
  }

  private static List<Layer> downwards(List<Layer> layers) {
    return layers.stream()
        .sorted(Comparator.comparing(Layer::z).reversed().thenComparing(Layer::id))
        .toList();
  }

  /** A line from the shelf's edge out to its label; returns where the words' first line starts. */
  private Spot lead(Layer layer, double top, boolean left) {
    double middle = layer.z().millimetres() - setting.shelf(layer).thickness().millimetres() / 2;
    Spot shelf = frame.at(left ? reach(layer).from() : reach(layer).to(), middle);
    double out = left ? -1 : 1;
    double wall = left ? frame.chamber().left() : frame.chamber().right();
    Spot end = new Spot(wall + out * LEAD, top + PITCH / 2);
    sheet.add(
        new Mark.Path(
            List.of(shelf, new Spot(wall + out * 1.5, shelf.y()), end),
            false,
            Look.outlined(Pen.solid(0.15, Ink.MIDDLE))));
    return new Spot(end.x() + out, top + 0.75 * PITCH);
  }

  private void label(List<String> told, Spot first, Anchor anchor, double most) {
    for (int i = 0; i < told.size(); i++) {
      TextStyle style = i == 0 ? TextStyle.SMALL_STRONG : TextStyle.SMALL;
      sheet.text(first.plus(0, i * PITCH), told.get(i), style, anchor, most);
    }
  }

  private List<String> told(Layer layer, int lines) {
    boolean carried = !setting.under(layer).isEmpty();
    String posts = "posts " + new PostWords(setting, words).lengths(setting.under(layer));
    if (lines == 1) {
      return List.of(layer.id() + (carried ? "  " + posts : ""));
    }
    String clear =
        "clear "
            + words.bare(setting.clearHeight(layer))
            + ", shelf "
            + words.bare(setting.shelf(layer).thickness());
    List<String> told = new ArrayList<>();
    told.add(layer.id() + "  top at " + words.bare(layer.z()));
    told.add(clear);
    told.add(carried ? posts : "on the floor");
    if (lines > 3) {
      told.add(LayerHeading.carries(setting.on(layer)));
    }
    return told;
  }

  /** The layer's name on its shelf where that is free; its figures are in the table of layers. */
  private void tag(Layer layer) {
    Spot at = frame.at(reach(layer).middle(), layer.z().millimetres()).plus(0, 1);
    double half = TextStyle.SMALL_STRONG.wording().width(layer.id()) / 2 + 0.6;
    Box box = new Box(at.x() - half, at.y() - 2.6, at.x() + half, at.y() + 0.9);
    if (sheet.isFree(box) && box.width() < reach(layer).length() / frame.ratio()) {
      sheet.box(box, Look.of(Pen.THIN, Ink.WHITE));
      sheet.text(at, layer.id(), TextStyle.SMALL_STRONG, Anchor.MIDDLE, box.width());
    }
  }
}
