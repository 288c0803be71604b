package shelfful.schedule;

import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.load.Layer;
import shelfful.load.Load;

/** Gives the pieces of a load other names. A lid beside its pot is named after it. */
final class Renaming {
  private static final String LID = "-lid";

  private Renaming() {}

  /**
   * The layers of a load with every piece under its other name.
   *
   * @param other name for that of a piece that is no lid
   */
  static List<Layer> layers(Load load, UnaryOperator<String> other) {
    return load.layers().stream()
        .map(
            layer ->
                layer.holding(
                    layer.placements().stream()
                        .map(placement -> placement.named(id -> name(id, other)))
                        .toList()))
        .toList();
  }

  private static String name(String pieceId, UnaryOperator<String> other) {
    return pieceId.endsWith(LID)
        ? other.apply(pieceId.substring(0, pieceId.length() - LID.length())) + LID
        : other.apply(pieceId);
  }
}
