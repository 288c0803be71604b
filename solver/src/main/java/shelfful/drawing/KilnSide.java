package shelfful.drawing;

import java.util.Comparator;
import java.util.List;
import shelfful.inspect.JudgedLoad;
import shelfful.load.Layer;

/**
 * The kiln from the side without words, for choosing a layer: the picture of the cover, as high as
 * asked for.
 *
 * @param picture the chamber and all that stands in it
 * @param seen from which side, in words
 * @param layers where each layer lies on the picture, in loading order
 */
public record KilnSide(Sheet picture, String seen, List<Room> layers) {
  /** Free round the walls, in millimetres. */
  private static final double EDGE = 1;

  /** Takes its own copy. */
  public KilnSide {
    layers = List.copyOf(layers);
  }

  /**
   * Where a layer lies: as wide as its shelf, from the shelf's underside up to what limits it.
   *
   * @param layerId the layer
   * @param box on the picture
   */
  public record Room(String layerId, Box box) {}

  /**
   * Draws the kiln from the side on which its columns hide each other least.
   *
   * @param height of the picture in millimetres
   */
  public static KilnSide of(JudgedLoad load, double height) {
    Setting setting = new Setting(load);
    SideView side = SideView.of(setting);
    Reach walls = side.across(Contours.of(setting.kiln().chamber().floorPlan()));
    double chamber = setting.kiln().chamber().height().millimetres();
    double ratio = chamber / (height - 2 * EDGE);
    double width = walls.length() / ratio + 2 * EDGE;
    SheetDraft sheet = new SheetDraft(SheetFormat.upright(PaperSize.A4), List.of());
    KilnSideDrawer.Frame frame =
        new KilnSideDrawer.Frame(
            new Spot(EDGE - walls.from() / ratio, height - EDGE),
            ratio,
            new Box(EDGE, EDGE, width - EDGE, height - EDGE));
    new KilnSideDrawer(setting, new GlazePalette(setting), sheet).kiln(frame);
    List<Room> rooms =
        setting.layers().stream().map(layer -> room(setting, side, frame, layer)).toList();
    return new KilnSide(sheet.picture(width, height), side.words(), rooms);
  }

  private static Room room(
      Setting setting, SideView side, KilnSideDrawer.Frame frame, Layer layer) {
    Reach reach = side.across(setting.contour(layer));
    double top = layer.z().millimetres();
    double ceiling = top + setting.clearHeight(layer).millimetres();
    Spot upper = frame.at(reach.from(), ceiling);
    Spot lower = frame.at(reach.to(), top - setting.shelf(layer).thickness().millimetres());
    return new Room(layer.id(), new Box(upper.x(), upper.y(), lower.x(), lower.y()));
  }

  /** The rooms from the top of the picture down, those at the left first. */
  public List<Room> downwards() {
    return layers.stream()
        .sorted(
            Comparator.comparingDouble((Room room) -> room.box().bottom())
                .thenComparingDouble(room -> room.box().left()))
        .toList();
  }
}
