package shelfful.load;

import java.util.List;
import shelfful.measure.Length;

/**
 * One shelf and what stands on it.
 *
 * @param id unique within a load, for instance {@code L3}
 * @param columnId the column it belongs to
 * @param level its place in that column, 1 at the bottom
 * @param place which of the column's shelf places it lies in, from 0
 * @param shelfId the kind of shelf
 * @param z the top of the shelf, over the chamber floor
 * @param placements what stands on it; may be empty
 */
public record Layer(
    String id,
    String columnId,
    int level,
    int place,
    String shelfId,
    Length z,
    List<Placement> placements) {
  /** Takes its own copy. */
  public Layer {
    placements = List.copyOf(placements);
  }

  /** The same shelf with other things on it. */
  public Layer holding(List<Placement> others) {
    return new Layer(id, columnId, level, place, shelfId, z, others);
  }
}
