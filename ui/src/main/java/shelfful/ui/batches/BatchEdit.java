package shelfful.ui.batches;

import java.util.List;

/**
 * One change of a batch list, for a history to take back and do again.
 *
 * @param name what was changed, in words
 * @param before the rows of cells as they were
 * @param after the rows as they became
 */
public record BatchEdit(String name, List<List<String>> before, List<List<String>> after) {
  /** Takes its own copies. */
  public BatchEdit {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }
}
