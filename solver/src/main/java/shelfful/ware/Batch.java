package shelfful.ware;

import java.time.LocalDate;
import java.util.Optional;
import shelfful.measure.Cone;

/**
 * A line of the list: so many pieces of one form in one glaze at one stage.
 *
 * @param id unique within a list
 * @param formId the form made
 * @param glazeId the glaze on it, or empty for ware that is not glazed
 * @param quantity how many pieces (a lidded form counts its lid with it), 1 to 1000
 * @param stage the pieces are at
 * @param cone to fire to when it is not the glaze's own cone
 * @param mustGo leave nothing of it out unless it cannot stand in the kiln at all
 * @param priority how much a piece is worth against others, 1 (plain) to 9 on a list; what plans
 *     several firings weighs with up to 1000
 * @param due the day it must be finished
 * @param order whose order it belongs to; orders are kept together where that costs nothing
 * @param set pieces that only go together: the k-th piece of every batch with this set
 * @param lidPlace where lids are fired; of no meaning for a form without a lid
 */
public record Batch(
    String id,
    String formId,
    Optional<String> glazeId,
    int quantity,
    Stage stage,
    Optional<Cone> cone,
    boolean mustGo,
    int priority,
    Optional<LocalDate> due,
    Optional<String> order,
    Optional<String> set,
    LidPlace lidPlace) {
  public static final int MOST_PIECES = 1000;

  /** On a list. */
  public static final int HIGHEST_PRIORITY = 9;

  /** The highest that planning several firings weighs with. */
  public static final int MOST_WEIGHT = 1000;

  /** Refuses quantities and priorities out of range. */
  public Batch {
    if (quantity < 1 || quantity > MOST_PIECES) {
      throw new IllegalArgumentException(
          "The quantity of batch " + id + " must be from 1 to 1000, not " + quantity);
    }
    if (priority < 1 || priority > MOST_WEIGHT) {
      throw new IllegalArgumentException(
          "The priority of batch " + id + " must be from 1 to 1000, not " + priority);
    }
  }
}
