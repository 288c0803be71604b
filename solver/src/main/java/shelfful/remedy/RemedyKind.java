package shelfful.remedy;

/**
 * What is done to bring a waiting piece in, in the order of its cost: first what only puts
 * something in, then what resets furniture, then what moves ware, then what gives something up,
 * what costs money, what is a risk. The next firing costs a wait; it is looked at beside all the
 * others. The order is ours.
 */
public enum RemedyKind {
  /** It goes in as the load stands; nothing else is touched. */
  AS_IT_STANDS("put in beside the rest"),
  /** Shelves stand on other posts, or a shelf more is used; no piece moves on its shelf. */
  OTHER_POSTS("other posts under a layer"),
  /** Other pieces are set elsewhere; all of them stay in. */
  WARE_MOVED("other pieces moved"),
  /** Everything is set anew in another of the kiln's column plans; as many or more are in. */
  OTHER_COLUMN_PLAN("another column plan"),
  /** Pieces that need not go wait in its place. */
  OTHERS_WAIT("other pieces wait instead"),
  /** Pieces that were marked to go wait in its place. */
  MUST_GO_DROPPED("a must-go piece waits instead"),
  /** One more shelf or set of posts is bought. */
  MORE_FURNITURE("one more shelf or more posts"),
  /** A distance of the house rules is kept less strictly. */
  GAP_RELAXED("a distance kept less strictly"),
  /** It waits and is fired with what else waits. */
  NEXT_FIRING("the next firing");

  private final String words;

  RemedyKind(String words) {
    this.words = words;
  }

  /** In words, for a list of what was tried. */
  public String words() {
    return words;
  }

  /** Whether safety is traded for room: it must be named as a risk wherever it is offered. */
  public boolean isRisk() {
    return this == GAP_RELAXED;
  }

  /** Whether it brings the piece into the very firing it waits for. */
  public boolean isInThisFiring() {
    return this != NEXT_FIRING;
  }
}
