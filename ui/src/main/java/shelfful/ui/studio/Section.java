package shelfful.ui.studio;

/** The parts of a studio that have pages. */
public enum Section {
  FORMS,
  GLAZES,
  KILNS,
  /** The ways of standing columns, of every kiln. */
  PLANS,
  SHELVES,
  POSTS,
  /** One page: the studio's name and the house rules. */
  RULES
}
