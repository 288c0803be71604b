package shelfful.ui.worth;

/**
 * What a person typed besides the lists.
 *
 * @param thinner a thickness of shelves to try as well; blank for none
 * @param firings a month; blank when money is not to be told
 * @param cost of one firing in her own money; blank likewise
 * @param thoroughness how much is planned
 */
public record Wishes(String thinner, String firings, String cost, Thoroughness thoroughness) {
  /** Nothing typed. */
  public static final Wishes NONE = new Wishes("", "", "", Thoroughness.USUAL);
}
