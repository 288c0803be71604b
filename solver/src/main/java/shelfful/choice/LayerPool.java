package shelfful.choice;

import java.util.ArrayList;
import java.util.List;

/**
 * The fullest contents met so far for each place where a shelf may lie, apart for shelves that
 * carry posts and shelves on top of a column. A content that another of the same place holds and
 * that is no lower is not kept.
 */
public final class LayerPool {
  private final List<List<KnownLayer>> under = new ArrayList<>();
  private final List<List<KnownLayer>> top = new ArrayList<>();
  private long added;

  /** An empty pool for so many shelf places. */
  public LayerPool(int spots) {
    for (int spot = 0; spot < spots; spot++) {
      under.add(new ArrayList<>());
      top.add(new ArrayList<>());
    }
  }

  /**
   * Takes in a content, unless it is known to be less than another.
   *
   * @param onTop whether it was found on a shelf without posts on it, and so need not fit under one
   */
  public void add(int spot, boolean onTop, KnownLayer layer) {
    List<KnownLayer> known = (onTop ? top : under).get(spot);
    for (KnownLayer other : known) {
      if (other.heightClass() <= layer.heightClass() && other.holds(layer)) {
        return;
      }
    }
    known.removeIf(other -> layer.heightClass() <= other.heightClass() && layer.holds(other));
    known.add(layer);
    added++;
  }

  /** Contents for a shelf that carries posts. */
  public List<KnownLayer> under(int spot) {
    return under.get(spot);
  }

  /** Contents found on a shelf with no posts on it; those of {@link #under} fit there as well. */
  public List<KnownLayer> onTop(int spot) {
    return top.get(spot);
  }

  /** How many contents were taken in so far: tells whether there is news. */
  public long added() {
    return added;
  }
}
