package shelfful.choice;

import java.util.List;

/**
 * A level of a column with a content for each of its places.
 *
 * @param heightClass the tallest content's
 * @param onTop whether nothing may be built over it
 * @param contents by place
 */
public record ChosenLevel(int heightClass, boolean onTop, List<KnownLayer> contents) {
  /** Takes its own copy. */
  public ChosenLevel {
    contents = List.copyOf(contents);
  }
}
