package shelfful.choice;

import java.util.List;

/** What chosen levels are really worth: rules that the choice itself does not know. */
@FunctionalInterface
public interface LoadCheck {
  /** The answer for levels that shelves and posts there are cannot carry. */
  double CANNOT_STAND = Double.NEGATIVE_INFINITY;

  /**
   * The worth once every piece is given its place, or {@link #CANNOT_STAND}.
   *
   * @param levels for each column the levels chosen; one that is {@code onTop} is the last
   */
  double worth(List<List<ChosenLevel>> levels);
}
