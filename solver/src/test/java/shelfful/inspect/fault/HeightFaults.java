package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.kiln.Column;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Length;

/** Heights that do not work out. */
final class HeightFaults {
  private HeightFaults() {}

  /** The house asks for more headroom than a piece under a shelf has. */
  static Optional<Load> headroomShort(Load load, Random random) {
    for (PlacedPiece piece : PlacedPiece.of(load, random)) {
      for (Layer over : load.layers()) {
        if (over.columnId().equals(piece.layer().columnId())
            && over.place() == piece.layer().place()
            && over.level() == piece.layer().level() + 1) {
          long clear = underside(load, over) - piece.top() - piece.tolerance();
          Length headroom = new Length(clear + PieceFaults.SHORT);
          return Optional.of(StudioEdit.heights(load, headroom, null, null));
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Load> lidClearanceShort(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .max(Comparator.comparingLong(PlacedPiece::top))
        .map(
            piece -> {
              long clear = chamberHeight(load) - piece.top() - piece.tolerance();
              Length underLid = new Length(clear + PieceFaults.SHORT);
              return StudioEdit.heights(load, null, underLid, null);
            });
  }

  static Optional<Load> columnTooHigh(Load load, Random random) {
    return load.layers().stream()
        .map(layer -> layer.z().micrometres())
        .max(Long::compare)
        .map(
            top -> {
              Length underLid = new Length(chamberHeight(load) - top + PieceFaults.SHORT);
              return StudioEdit.heights(load, null, underLid, null);
            });
  }

  static Optional<Load> shelfTooLow(Load load, Random random) {
    return load.layers().stream()
        .map(layer -> underside(load, layer))
        .min(Long::compare)
        .map(
            lowest -> StudioEdit.heights(load, null, null, new Length(lowest + PieceFaults.SHORT)));
  }

  static Optional<Load> columnTopsUnequal(Load load, Random random) {
    for (Column column : ShelfFaults.columns(load)) {
      boolean used = load.layers().stream().anyMatch(layer -> layer.columnId().equals(column.id()));
      if (!used || column.standsOn().size() < 2) {
        continue;
      }
      String below = column.standsOn().get(random.nextInt(column.standsOn().size()));
      int top =
          load.layers().stream()
              .filter(layer -> layer.columnId().equals(below))
              .mapToInt(Layer::level)
              .max()
              .orElse(0);
      if (top > 0) {
        return Optional.of(raised(load, below, top));
      }
    }
    return Optional.empty();
  }

  /** A level lies a twentieth of a millimetre higher than its posts reach. */
  static Optional<Load> layerRaised(Load load, Random random) {
    return shuffled(load, random).stream()
        .findFirst()
        .map(layer -> raised(load, layer.columnId(), layer.level()));
  }

  private static Load raised(Load load, String columnId, int level) {
    return LoadEdit.layers(
        load,
        load.layers().stream()
            .map(
                layer ->
                    layer.columnId().equals(columnId) && layer.level() == level
                        ? LoadEdit.at(layer, layer.z().plus(new Length(PieceFaults.SHORT)))
                        : layer)
            .toList());
  }

  static Optional<Load> layerHeightsSwapped(Load load, Random random) {
    return twoOfOnePlace(load, random)
        .map(
            two ->
                LoadEdit.layer(
                    LoadEdit.layer(load, two.get(0), layer -> LoadEdit.at(layer, two.get(1).z())),
                    two.get(1),
                    layer -> LoadEdit.at(layer, two.get(0).z())));
  }

  static Optional<Load> layersAtOneHeight(Load load, Random random) {
    return twoOfOnePlace(load, random)
        .map(two -> LoadEdit.layer(load, two.get(0), layer -> LoadEdit.at(layer, two.get(1).z())));
  }

  private static Optional<List<Layer>> twoOfOnePlace(Load load, Random random) {
    List<Layer> layers = shuffled(load, random);
    for (Layer one : layers) {
      for (Layer other : layers) {
        if (one.columnId().equals(other.columnId())
            && one.place() == other.place()
            && one.level() != other.level()) {
          return Optional.of(List.of(one, other));
        }
      }
    }
    return Optional.empty();
  }

  static List<Layer> shuffled(Load load, Random random) {
    List<Layer> layers = new ArrayList<>(load.layers());
    Collections.shuffle(layers, random);
    return layers;
  }

  static long underside(Load load, Layer layer) {
    return layer.z().micrometres() - ShelfFaults.shelf(load, layer).thickness().micrometres();
  }

  private static long chamberHeight(Load load) {
    return PieceFaults.kiln(load).chamber().height().micrometres();
  }
}
