package shelfful.choice;

import java.util.List;

/** Whether shelves and posts there are can carry some levels. */
@FunctionalInterface
public interface StackCheck {
  /**
   * Asked of unfinished stacks too.
   *
   * @param levels for each column the levels chosen so far; one that is {@code onTop} belongs last
   */
  boolean canStand(List<List<ChosenLevel>> levels);
}
