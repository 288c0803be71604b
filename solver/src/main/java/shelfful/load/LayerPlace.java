package shelfful.load;

import java.util.Comparator;

/**
 * Which layer is meant, whatever it is called in a load.
 *
 * @param columnId the column
 * @param level its place in that column, 1 at the bottom
 * @param place which of the column's shelf places, from 0
 */
public record LayerPlace(String columnId, int level, int place) implements Comparable<LayerPlace> {
  private static final Comparator<LayerPlace> ORDER =
      Comparator.comparing(LayerPlace::columnId)
          .thenComparingInt(LayerPlace::level)
          .thenComparingInt(LayerPlace::place);

  /** Refuses a level under the lowest and a negative place. */
  public LayerPlace {
    if (level < 1 || place < 0) {
      throw new IllegalArgumentException(
          "A layer is at level 1 or higher and at place 0 or higher, not " + level + ", " + place);
    }
  }

  /** Where a layer of a load is. */
  public static LayerPlace of(Layer layer) {
    return new LayerPlace(layer.columnId(), layer.level(), layer.place());
  }

  @Override
  public int compareTo(LayerPlace other) {
    return ORDER.compare(this, other);
  }
}
