package shelfful.week;

/**
 * Pieces of a batch that are unpacked for the last time after the day they are due, all on one day.
 *
 * @param batchId the batch
 * @param pieces how many
 * @param days from the day due to the day of unpacking, at least 1
 */
public record Late(String batchId, int pieces, int days) {
  /** Refuses what is not late. */
  public Late {
    if (pieces < 1 || days < 1) {
      throw new IllegalArgumentException("At least 1 piece is late by at least 1 day");
    }
  }
}
