package shelfful.drawing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shelfful.inspect.JudgedLoad;
import shelfful.inspect.LayerFigures;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Firing;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.Piece;
import shelfful.ware.PileOutline;
import shelfful.ware.StandingWare;

/** A load with every id looked up, in the order it is loaded. */
final class Setting {
  private final JudgedLoad inspected;
  private final Load load;
  private final Studio studio;
  private final Kiln kiln;
  private final ColumnPlan plan;
  private final List<Layer> layers;
  private final Map<String, Piece> pieces = new LinkedHashMap<>();
  private final Map<String, List<SetPiece>> set = new LinkedHashMap<>();
  private final List<List<Layer>> together;

  Setting(JudgedLoad inspected) {
    this.inspected = inspected;
    this.load = inspected.load();
    this.studio = load.request().studio();
    this.kiln = studio.kiln(firing().kilnId()).orElseThrow();
    this.plan =
        kiln.columnPlans().stream()
            .filter(one -> one.id().equals(load.columnPlanId()))
            .findFirst()
            .orElseThrow();
    this.layers = new LoadingOrder(plan).sorted(load.layers());
    load.request().pieces().forEach(piece -> pieces.put(piece.id(), piece));
    for (Layer layer : layers) {
      set.put(layer.id(), Pile.of(layer.placements()).stream().map(this::lookUp).toList());
    }
    this.together = new SetTogether(set, this::contour).groups(layers);
    together.forEach(this::number);
  }

  private void number(List<Layer> group) {
    List<SetPiece> all = group.stream().flatMap(layer -> on(layer).stream()).toList();
    List<SetPiece> numbered = SettingOrder.number(all, kiln.loading());
    for (Layer layer : group) {
      Set<String> here =
          on(layer).stream().map(piece -> piece.piece().id()).collect(Collectors.toSet());
      set.put(
          layer.id(),
          numbered.stream().filter(piece -> here.contains(piece.piece().id())).toList());
    }
  }

  /**
   * The layers beside this one that are set together with it, since ware reaches over the joint.
   */
  List<Layer> setWith(Layer layer) {
    return together.stream()
        .filter(group -> group.contains(layer))
        .flatMap(List::stream)
        .filter(other -> !other.equals(layer))
        .toList();
  }

  /**
   * A piece of the list as it would stand at a place, with all of the pile that it is in now.
   *
   * @param placement of the piece; the others of its pile go with it
   */
  SetPiece lookUp(Placement placement) {
    return load.layers().stream()
        .flatMap(layer -> Pile.of(layer.placements()).stream())
        .filter(pile -> pile.size() > 1 && pile.holds(placement.pieceId()))
        .findFirst()
        .map(pile -> lookUp(moved(pile, placement)))
        .orElseGet(() -> lookUpAlone(placement));
  }

  private static Pile moved(Pile pile, Placement to) {
    return new Pile(pile.pieces().stream().map(one -> one.movedTo(to.at(), to.turn())).toList());
  }

  private SetPiece lookUp(Pile pile) {
    SetPiece lowest = lookUpAlone(pile.lowest());
    if (pile.size() == 1) {
      return lowest;
    }
    List<SetPiece> above = pile.pieces().stream().skip(1).map(this::lookUpAlone).toList();
    StandingWare body =
        PileOutline.of(
            Stream.concat(Stream.of(lowest), above.stream()).map(SetPiece::ware).toList());
    return new SetPiece(
        0, lowest.placement(), lowest.piece(), lowest.form(), lowest.glaze(), body, body, above);
  }

  private SetPiece lookUpAlone(Placement placement) {
    Piece piece = pieces.get(placement.pieceId());
    Batch batch = piece.batch();
    Form form = studio.form(batch.formId()).orElseThrow();
    StandingWare upright =
        StandingWare.of(form, piece.part(), firing().kind().goesIn(), Optional.empty());
    Rest rest = placement.rest();
    StandingWare bare = upright.lying(rest.upsideDown(), drawable(rest.lift()));
    StandingWare ware =
        placement.onCatcher()
            ? StandingWare.of(
                form, piece.part(), firing().kind().goesIn(), Optional.of(studio.rules().catcher()))
            : bare;
    return new SetPiece(
        0, placement, piece, form, batch.glazeId().flatMap(studio::glaze), ware, bare, List.of());
  }

  /** A load with faults may say that a piece is under its shelf. */
  private static Length drawable(Length lift) {
    return Length.longer(lift, Length.ZERO);
  }

  JudgedLoad inspected() {
    return inspected;
  }

  Load load() {
    return load;
  }

  Studio studio() {
    return studio;
  }

  Firing firing() {
    return load.request().firing();
  }

  Kiln kiln() {
    return kiln;
  }

  ColumnPlan plan() {
    return plan;
  }

  /** In loading order. */
  List<Layer> layers() {
    return layers;
  }

  /** What stands on a layer, in the order of setting: pieces, and piles as one. */
  List<SetPiece> on(Layer layer) {
    return set.get(layer.id());
  }

  /** Everything that goes in, in loading order, piles as one. */
  List<SetPiece> placed() {
    return set.values().stream().flatMap(List::stream).toList();
  }

  Optional<Piece> piece(String id) {
    return Optional.ofNullable(pieces.get(id));
  }

  Column column(Layer layer) {
    return plan.columns().stream()
        .filter(column -> column.id().equals(layer.columnId()))
        .findFirst()
        .orElseThrow();
  }

  Shelf shelf(Layer layer) {
    return studio.shelf(layer.shelfId()).orElseThrow();
  }

  ShelfPlace place(Layer layer) {
    return column(layer).places().get(layer.place());
  }

  /** The outline of a layer's shelf where it lies. */
  List<Point> contour(Layer layer) {
    return Contours.of(shelf(layer).outline(), place(layer));
  }

  /** The judge's figures, or empty where it gave none for this layer. */
  Optional<LayerFigures> figures(Layer layer) {
    return inspected.figures().stream().filter(row -> row.layerId().equals(layer.id())).findFirst();
  }

  /** The posts a layer's shelf lies on. */
  List<StandingPost> under(Layer layer) {
    return load.posts().stream().filter(post -> post.carries().contains(layer.id())).toList();
  }

  /** Those of them that stand before the shelf is laid, because a neighbour lies on them too. */
  List<StandingPost> standAlready(Layer layer) {
    List<String> laid = layers.subList(0, layers.indexOf(layer)).stream().map(Layer::id).toList();
    return under(layer).stream()
        .filter(post -> post.carries().stream().anyMatch(laid::contains))
        .toList();
  }

  /** The keep-outs that share a height with a layer's room, by name. */
  List<KeepOut> inTheWay(Layer layer) {
    long floor = layer.z().micrometres();
    long ceiling = floor + clearHeight(layer).micrometres();
    return kiln.keepOuts().stream()
        .filter(one -> one.bottom().micrometres() < ceiling && one.top().micrometres() > floor)
        .sorted(Comparator.comparing(KeepOut::name))
        .toList();
  }

  /** The posts that stand on a layer's shelf. */
  List<StandingPost> standingOn(Layer layer) {
    List<Point> contour = contour(layer);
    return load.posts().stream()
        .filter(post -> post.base().equals(layer.z()))
        .filter(post -> Contact.isOver(contour, post.at(), across(post) / 2))
        .toList();
  }

  /** The lengths a standing post is made of, the lowest first. */
  List<Length> lengths(StandingPost post) {
    return post.postIds().stream().map(id -> studio.post(id).orElseThrow().length()).toList();
  }

  /** The widest section of a standing post, in millimetres. */
  double across(StandingPost post) {
    return post.postIds().stream()
        .mapToDouble(id -> studio.post(id).orElseThrow().across().millimetres())
        .max()
        .orElse(0);
  }

  /** From the top of a layer's shelf to the lowest shelf over any of it, or to the lid. */
  Length clearHeight(Layer layer) {
    return figures(layer)
        .map(LayerFigures::clearHeight)
        .orElseGet(() -> ceiling(layer).minus(layer.z()));
  }

  private Length ceiling(Layer layer) {
    List<Point> contour = contour(layer);
    return layers.stream()
        .filter(other -> other.z().isLongerThan(layer.z()))
        .filter(other -> Contact.overlap(contour, contour(other)))
        .map(other -> other.z().minus(shelf(other).thickness()))
        .min(Comparator.naturalOrder())
        .orElse(kiln.chamber().height());
  }
}
