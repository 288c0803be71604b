package shelfful.inspect.fault;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;

/** Shelves that are overloaded, missing or not where they belong. */
final class ShelfFaults {
  private ShelfFaults() {}

  static List<Column> columns(Load load) {
    return PieceFaults.kiln(load).columnPlans().stream()
        .filter(plan -> plan.id().equals(load.columnPlanId()))
        .findFirst()
        .orElseThrow()
        .columns();
  }

  static ShelfPlace place(Load load, Layer layer) {
    return columns(load).stream()
        .filter(column -> column.id().equals(layer.columnId()))
        .findFirst()
        .orElseThrow()
        .places()
        .get(layer.place());
  }

  static Shelf shelf(Load load, Layer layer) {
    return load.request().studio().shelf(layer.shelfId()).orElseThrow();
  }

  /** The limit is a gram under what the heaviest layer carries. */
  static Optional<Load> overloaded(Load load, Random random) {
    Map<Layer, Long> grams =
        PlacedPiece.of(load, random).stream()
            .collect(
                Collectors.groupingBy(
                    PlacedPiece::layer,
                    Collectors.summingLong(piece -> piece.ware().mass().grams())));
    return grams.entrySet().stream()
        .max(Map.Entry.comparingByValue(Comparator.naturalOrder()))
        .filter(heaviest -> heaviest.getValue() > 0)
        .map(
            heaviest ->
                StudioEdit.shelf(
                    load,
                    heaviest.getKey().shelfId(),
                    shelf -> StudioEdit.limited(shelf, new Mass(heaviest.getValue() - 1))));
  }

  static Optional<Load> stolen(Load load, Random random) {
    String id = load.layers().get(random.nextInt(load.layers().size())).shelfId();
    int used = (int) load.layers().stream().filter(layer -> layer.shelfId().equals(id)).count();
    return Optional.of(StudioEdit.counted(load, id, used - 1));
  }

  /** A shelf with others beside or over it is gone, what stood on it waits. */
  static Optional<Load> leftOut(Load load, Random random) {
    return HeightFaults.shuffled(load, random).stream()
        .filter(layer -> isMissedIn(load, layer))
        .findFirst()
        .map(
            gone -> {
              List<String> waiting = gone.placements().stream().map(Placement::pieceId).toList();
              List<Layer> others = load.layers().stream().filter(layer -> layer != gone).toList();
              return LoadEdit.waiting(LoadEdit.layers(load, others), waiting);
            });
  }

  private static boolean isMissedIn(Load load, Layer layer) {
    return load.layers().stream()
        .anyMatch(
            other ->
                other != layer
                    && other.columnId().equals(layer.columnId())
                    && other.level() >= layer.level());
  }

  static Optional<Load> inNoPlace(Load load, Random random) {
    return HeightFaults.shuffled(load, random).stream()
        .findFirst()
        .map(layer -> changed(load, layer, layer.place() + 100, layer.shelfId()));
  }

  static Optional<Load> ofWrongKind(Load load, Random random) {
    Layer layer = load.layers().get(random.nextInt(load.layers().size()));
    List<String> fitting = place(load, layer).shelfIds();
    return load.request().studio().shelves().stream()
        .map(Shelf::id)
        .filter(id -> !fitting.contains(id))
        .findFirst()
        .map(id -> changed(load, layer, layer.place(), id));
  }

  private static Load changed(Load load, Layer layer, int place, String shelfId) {
    return LoadEdit.layer(
        load,
        layer,
        old ->
            new Layer(
                old.id(), old.columnId(), old.level(), place, shelfId, old.z(), old.placements()));
  }

  /** Every place of the plan lies a chamber's width to the right. */
  static Optional<Load> throughWall(Load load, Random random) {
    Length width = PieceFaults.kiln(load).chamber().floorPlan().width();
    return Optional.of(
        StudioEdit.kiln(
            load,
            kiln ->
                kiln.with(kiln.columnPlans().stream().map(plan -> shifted(plan, width)).toList())));
  }

  private static ColumnPlan shifted(ColumnPlan plan, Length by) {
    return new ColumnPlan(
        plan.id(),
        plan.name(),
        plan.columns().stream()
            .map(
                column ->
                    new Column(
                        column.id(),
                        column.places().stream()
                            .map(
                                place ->
                                    new ShelfPlace(
                                        place.shelfIds(), shifted(place.at(), by), place.turn()))
                            .toList(),
                        column.posts(),
                        column.standsOn()))
            .toList());
  }

  private static Point shifted(Point point, Length by) {
    return new Point(point.x().plus(by), point.y());
  }

  static Optional<Load> inPeepholeLine(Load load, Random random) {
    return HeightFaults.shuffled(load, random).stream()
        .findFirst()
        .map(
            layer -> {
              Point at =
                  ShelfEdge.laid(
                      place(load, layer), ShelfEdge.inside(shelf(load, layer).outline()));
              Length underside = new Length(HeightFaults.underside(load, layer));
              return StudioEdit.keepOut(
                  load,
                  new KeepOut(
                      "planted",
                      KeepOut.Kind.PEEPHOLE_LINE,
                      at,
                      at,
                      new Length(1000),
                      underside,
                      layer.z()));
            });
  }
}
