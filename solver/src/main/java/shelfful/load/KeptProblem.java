package shelfful.load;

import java.util.List;

/**
 * Why a setting cannot be kept as it is asked for. Found before anything is planned.
 *
 * @param code which kind of problem
 * @param pieceIds the kept pieces concerned; may be empty
 * @param sentence what is wrong, with its figures, for people
 * @param mend one thing that would help, for people
 */
public record KeptProblem(Code code, List<String> pieceIds, String sentence, String mend) {
  /** Takes its own copy. */
  public KeptProblem {
    pieceIds = List.copyOf(pieceIds);
  }

  /** What can be wrong with a kept setting. */
  public enum Code {
    /**
     * The column plan it belongs to is not the one asked for, or the kiln has none of that name.
     */
    OTHER_COLUMN_PLAN,
    /** The column has no such shelf place, or cannot be built so high. */
    NO_SUCH_LAYER,
    /** The list has no such piece any more. */
    NOT_ON_THE_LIST,
    /** The piece may not go into this firing whatever the setting. */
    MAY_NOT_GO_IN,
    /** One piece is kept in two places, or on a locked layer that does not hold it. */
    IN_TWO_PLACES,
    /** The piece rests on another that is not kept with it. */
    PILE_NOT_WHOLE,
    /** The piece stands over the shelf's edge or too near the wall. */
    OUTSIDE,
    /** The piece stands where a post must stand, or in a keep-out. */
    IN_THE_WAY,
    /** Two kept pieces stand too near to each other. */
    TOO_CLOSE,
    /** The glazes of two kept pieces may not be together. */
    KEPT_APART,
    /** The kept pieces are more than any shelf for that place carries. */
    TOO_HEAVY,
    /** The shelf or the posts of a locked layer are not there, or do not reach its height. */
    LOCKED_LAYER_WRONG,
    /** A layer under a locked one is not locked. */
    NOT_LOCKED_BELOW,
    /** Posts and shelves in stock put no layer where the kept pieces could stand. */
    NO_STACK,
    /** The rest of a kept piece's set finds no room beside what is kept. */
    SET_FINDS_NO_ROOM
  }
}
