package shelfful.load;

/**
 * A piece that waits, and why.
 *
 * @param pieceId the piece
 * @param reason from the closed list
 * @param sentence the reason with its numbers, for people
 * @param mend one thing that would help, for people
 */
public record LeftOut(String pieceId, Reason reason, String sentence, String mend) {

  /** Why a piece can wait. */
  public enum Reason {
    /** It is not at the stage this kind of firing takes. */
    NOT_READY,
    /** Its cone is further from the firing's than the tolerance. */
    OTHER_CONE,
    /** Its glaze needs another atmosphere. */
    OTHER_ATMOSPHERE,
    /** It is taller than any layer of the kiln could be with the posts there are. */
    TOO_TALL,
    /** It is wider than any shelf or the chamber allows. */
    TOO_WIDE,
    /** It is heavier than any shelf may carry. */
    TOO_HEAVY,
    /** No shelf there is may be fired this hot. */
    NO_SHELF_FOR_CONE,
    /** Its glaze forbids every zone where a layer tall enough for it can be. */
    NO_ZONE,
    /** Another glaze in this firing marks it or is marked by it. */
    KEPT_APART,
    /** Another piece of its set waits, and they only go together. */
    SET_WAITS,
    /** It would fit alone, but the room went to others. */
    NO_ROOM,
    /** Somebody took it out by hand. */
    TAKEN_OUT
  }
}
