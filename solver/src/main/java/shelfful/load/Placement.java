package shelfful.load;

import java.util.function.UnaryOperator;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * Where one piece stands. Its height is the top of its layer's shelf, and over that what its {@link
 * Rest} says.
 *
 * @param pieceId the piece
 * @param at its axis, chamber frame
 * @param turn of its form's frame
 * @param onCatcher whether it stands on a catcher
 * @param rest what carries it and how it lies
 */
public record Placement(String pieceId, Point at, Angle turn, boolean onCatcher, Rest rest) {

  /** A piece upright on its shelf. */
  public Placement(String pieceId, Point at, Angle turn, boolean onCatcher) {
    this(pieceId, at, turn, onCatcher, Rest.ON_SHELF);
  }

  /** The same piece, lying the same way, elsewhere. */
  public Placement movedTo(Point to, Angle turned) {
    return new Placement(pieceId, to, turned, onCatcher, rest);
  }

  /**
   * Says nothing of the rest where there is nothing to say: plans without piles keep their mark.
   */
  @Override
  public String toString() {
    String plain =
        "Placement[pieceId="
            + pieceId
            + ", at="
            + at
            + ", turn="
            + turn
            + ", onCatcher="
            + onCatcher;
    return plain + (rest.isPlain() ? "]" : ", rest=" + rest + "]");
  }

  /** The same place and carrier under other names. */
  public Placement named(UnaryOperator<String> name) {
    Rest named = new Rest(rest.on().map(name), rest.way(), rest.lift(), rest.upsideDown());
    return new Placement(name.apply(pieceId), at, turn, onCatcher, named);
  }
}
