package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.ware.Batch;

/** Names and lists that do not add up. */
final class ListFaults {
  private ListFaults() {}

  static Optional<Load> lost(Load load, Random random) {
    return PlacedPiece.of(load, random).stream().findFirst().map(piece -> without(load, piece));
  }

  private static Load without(Load load, PlacedPiece piece) {
    return LoadEdit.layer(
        load,
        piece.layer(),
        layer ->
            layer.holding(
                layer.placements().stream()
                    .filter(placement -> placement != piece.placement())
                    .toList()));
  }

  /** The same piece once more, on any layer. */
  static Optional<Load> twice(Load load, Random random) {
    Layer target = load.layers().get(random.nextInt(load.layers().size()));
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece ->
                LoadEdit.layer(
                    load,
                    target,
                    layer -> {
                      List<Placement> placements = new ArrayList<>(layer.placements());
                      placements.add(piece.placement());
                      return layer.holding(placements);
                    }));
  }

  static Optional<Load> inBothLists(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece -> {
              List<LeftOut> leftOut = new ArrayList<>(load.leftOut());
              leftOut.add(LoadEdit.waits(piece.piece().id()));
              return LoadEdit.leftOut(load, leftOut);
            });
  }

  static Optional<Load> unknown(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece ->
                LoadEdit.placement(
                    load,
                    piece,
                    old -> new Placement("nobody", old.at(), old.turn(), old.onCatcher())));
  }

  /** Two batches become one set, and of one pair one piece waits. */
  static Optional<Load> setSplit(Load load, Random random) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    for (PlacedPiece one : pieces) {
      for (PlacedPiece other : pieces) {
        Batch first = one.piece().batch();
        Batch second = other.piece().batch();
        if (one.piece().number() == other.piece().number() && !first.id().equals(second.id())) {
          return Optional.of(
              LoadEdit.waiting(
                  LoadEdit.batches(
                      load,
                      batch ->
                          batch.equals(first) || batch.equals(second)
                              ? BatchEdit.ofSet(batch, "planted")
                              : batch),
                  List.of(one.piece().id())));
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Load> layerIdTwice(Load load, Random random) {
    List<Layer> layers = HeightFaults.shuffled(load, random);
    if (layers.size() < 2) {
      return Optional.empty();
    }
    String id = layers.get(0).id();
    return Optional.of(
        LoadEdit.layer(
            load,
            layers.get(1),
            old ->
                new Layer(
                    id,
                    old.columnId(),
                    old.level(),
                    old.place(),
                    old.shelfId(),
                    old.z(),
                    old.placements())));
  }

  static Optional<Load> columnPlanUnknown(Load load, Random random) {
    return Optional.of(
        new Load(load.request(), "no such plan", load.layers(), load.posts(), load.leftOut()));
  }
}
