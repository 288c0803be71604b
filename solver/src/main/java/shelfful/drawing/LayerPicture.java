package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.inspect.JudgedLoad;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.LengthUnit;
import shelfful.record.Grade;

/**
 * One layer from above for the screen, with the marks of its paper sheet but without the words
 * round it. Its scale and frame depend on the shelf and the kiln alone, so that nothing jumps when
 * a piece moves. Made of any load that the judge has seen: pieces with a fault are hatched across.
 */
public final class LayerPicture {
  /** Width or height of the picture, whichever is larger, in millimetres of paper. */
  private static final double SIZE = 200;

  private static final double UNDER = 8;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;

  private LayerPicture(Setting setting, LengthWords words) {
    this.setting = setting;
    this.words = words;
    this.palette = new GlazePalette(setting);
  }

  /**
   * Makes ready for all layers of a load.
   *
   * @param unit that the light lines lie in, by which places are read off
   */
  public static LayerPicture of(JudgedLoad load, LengthUnit unit) {
    return new LayerPicture(new Setting(load), new LengthWords(unit));
  }

  /**
   * What is to be seen besides the ware.
   *
   * @param lifted a piece that is in somebody's hand and not on the shelf
   * @param pinned ids of pieces to mark as pinned
   */
  public record Marked(Optional<String> lifted, Set<String> pinned) {
    public static final Marked NOTHING = new Marked(Optional.empty(), Set.of());

    /** Takes its own copy. */
    public Marked {
      pinned = Set.copyOf(pinned);
    }
  }

  /**
   * The picture of a layer.
   *
   * @throws IllegalArgumentException when the load has no such layer
   */
  public Sheet layer(String layerId, Marked marked) {
    Layer layer = layerOf(layerId);
    Frame frame = frame(layer);
    SheetDraft sheet = draft(List.of(layerId));
    List<PostMark> posts = PostMark.of(setting, setting.under(layer), setting.standingOn(layer));
    List<SetPiece> pieces =
        setting.on(layer).stream()
            .filter(piece -> marked.lifted().stream().noneMatch(piece::holds))
            .toList();
    new ShelfDrawer(setting, palette, sheet, layer, posts)
        .draw(frame.view(), frame.box(), pieces, new ShelfPositions(setting, layer, words));
    HandMarks marks = new HandMarks(sheet, frame.view());
    Set<String> named = faulty();
    List<SetPiece> faulty =
        pieces.stream().filter(piece -> named.stream().anyMatch(piece::holds)).toList();
    faulty.forEach(marks::forbidden);
    labelAgain(sheet, frame.view(), faulty);
    for (SetPiece piece : pieces) {
      if (marked.pinned().stream().anyMatch(piece::holds)) {
        marks.pin(piece);
      }
    }
    Spot front = new Spot(frame.box().centre().x(), frame.box().bottom() + UNDER - 2);
    sheet.text(front, "FRONT", TextStyle.SECTION, Anchor.MIDDLE, 40);
    return sheet.picture(frame.box().right(), frame.box().bottom() + UNDER);
  }

  /** Words over the hatching, which would make them hard to read. */
  private void labelAgain(SheetDraft sheet, PlanView view, List<SetPiece> pieces) {
    SheetDraft words = draft(List.of());
    new PieceDrawer(words, view, palette).labels(pieces);
    words.picture(1, 1).marks().forEach(sheet::add);
  }

  private static SheetDraft draft(List<String> layerIds) {
    return new SheetDraft(SheetFormat.upright(PaperSize.A4), layerIds);
  }

  private Set<String> faulty() {
    return setting.inspected().faults().stream()
        .flatMap(fault -> fault.pieceIds().stream())
        .collect(Collectors.toSet());
  }

  /**
   * A piece, with all of its pile, by itself over a layer's picture.
   *
   * @param number to write on it
   * @param forbidden whether to hatch it across
   */
  public List<Mark> held(String layerId, Placement place, int number, boolean forbidden) {
    Frame frame = frame(layerOf(layerId));
    SheetDraft sheet = draft(List.of(layerId));
    SetPiece piece = setting.lookUp(place).numbered(number);
    new PieceDrawer(sheet, frame.view(), palette).draw(List.of(piece));
    if (forbidden) {
      new HandMarks(sheet, frame.view()).forbidden(piece);
      labelAgain(sheet, frame.view(), List.of(piece));
    }
    return sheet.picture(1, 1).marks();
  }

  /**
   * How pieces of a layer came out, to lay over its picture; a pile has the mark of its worst
   * piece.
   *
   * @param grades of pieces by their id; others are left as they are
   * @param letters one for each grade
   */
  public List<Mark> graded(String layerId, Map<String, Grade> grades, Map<Grade, String> letters) {
    Layer layer = layerOf(layerId);
    SheetDraft sheet = draft(List.of(layerId));
    GradeMarks marks = new GradeMarks(sheet, frame(layer).view(), letters);
    Map<SetPiece, Grade> worst = new LinkedHashMap<>();
    for (SetPiece piece : setting.on(layer)) {
      piece.all().stream()
          .map(one -> grades.get(one.piece().id()))
          .filter(Objects::nonNull)
          .max(Comparator.naturalOrder())
          .ifPresent(grade -> worst.put(piece, grade));
    }
    worst.forEach(marks::strokes);
    labelAgain(sheet, frame(layer).view(), List.copyOf(worst.keySet()));
    worst.forEach(marks::letter);
    return sheet.picture(1, 1).marks();
  }

  private Layer layerOf(String id) {
    return setting
        .load()
        .layer(id)
        .orElseThrow(() -> new IllegalArgumentException("The load has no layer " + id));
  }

  private record Frame(PlanView view, Box box) {}

  /** The shelf with some of what lies round it, but nothing beyond the walls. */
  private Frame frame(Layer layer) {
    Reach across = shown(layer, true);
    Reach deep = shown(layer, false);
    double ratio = Math.max(across.length(), deep.length()) / SIZE;
    boolean edges = new ShelfPositions(setting, layer, words).fromEdges();
    double left = edges ? ShelfDrawer.EDGE_FIGURE : 0;
    double top = edges ? ShelfDrawer.EDGE_FIGURE_ABOVE : 0;
    PlanView view =
        new PlanView(ratio, new Spot(left - across.from() / ratio, top + deep.to() / ratio));
    double right = left + across.length() / ratio;
    return new Frame(view, new Box(left, top, right, top + deep.length() / ratio));
  }

  private Reach shown(Layer layer, boolean alongX) {
    Reach shelf = ShelfDrawer.along(setting.contour(layer), alongX);
    Reach wall = ShelfDrawer.along(Contours.of(setting.kiln().chamber().floorPlan()), alongX);
    return new Reach(
        shelf.from() - ShelfDrawer.surroundings(shelf.from() - wall.from()),
        shelf.to() + ShelfDrawer.surroundings(wall.to() - shelf.to()));
  }

  /** The number a piece has on its layer; 0 when it does not stand on it. */
  public int numberOf(String layerId, String pieceId) {
    return setting.on(layerOf(layerId)).stream()
        .filter(piece -> piece.holds(pieceId))
        .mapToInt(SetPiece::number)
        .findFirst()
        .orElse(0);
  }

  /** Every layer's id in the order they are loaded. */
  public List<String> layerIds() {
    List<String> ids = new ArrayList<>();
    setting.layers().forEach(layer -> ids.add(layer.id()));
    return List.copyOf(ids);
  }
}
