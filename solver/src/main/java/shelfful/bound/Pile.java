package shelfful.bound;

/**
 * A level of a column with the posts on it, and what they carry.
 *
 * @param height from the shelf of the level up to the highest need over it, micrometres
 * @param worth of everything in it, posts and shelves paid
 * @param level what stands on its shelf, or null for nothing
 * @param post index of the length of the posts on its shelf, −1 for none
 * @param above the rest of the pile, null at its end
 */
record Pile(long height, double worth, LevelWorth level, int post, Pile above) {
  /** This level with a pile on its posts. */
  Pile under(Pile pile) {
    return new Pile(height + pile.height, worth + pile.worth, level, post, pile);
  }
}
