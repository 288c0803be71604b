package shelfful.record;

import java.util.Optional;

/**
 * How one piece came out.
 *
 * @param pieceId the piece
 * @param grade how it came out
 * @param cause what is wrong with it, in the potter's words; empty for a good piece, and where
 *     nobody can say
 */
public record PieceResult(String pieceId, Grade grade, Optional<String> cause) {
  /** Refuses a cause for a good piece. */
  public PieceResult {
    if (grade == Grade.GOOD && cause.isPresent()) {
      throw new IllegalArgumentException("The good piece " + pieceId + " cannot have a cause");
    }
  }
}
