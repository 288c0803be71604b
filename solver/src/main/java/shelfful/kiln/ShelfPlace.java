package shelfful.kiln;

import java.util.List;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * Where one shelf of a column lies in the plan.
 *
 * @param shelfIds the kinds of shelf that may lie here, the preferred one first; never empty
 * @param at the origin of the shelf's frame, in the chamber frame
 * @param turn of the shelf about that origin
 */
public record ShelfPlace(List<String> shelfIds, Point at, Angle turn) {
  /** Takes its own copy and refuses a place for no shelf. */
  public ShelfPlace {
    shelfIds = List.copyOf(shelfIds);
    if (shelfIds.isEmpty()) {
      throw new IllegalArgumentException("A shelf place needs at least one kind of shelf");
    }
  }
}
