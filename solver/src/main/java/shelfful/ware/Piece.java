package shelfful.ware;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One thing that stands on a shelf by itself: a pot, a pot with its lid on, or a lid.
 *
 * @param id unique within a list: batch, number and part, for instance {@code B7-003} or {@code
 *     B7-003-lid}
 * @param batch it belongs to
 * @param number within its batch, from 1; a pot and its lid share a number
 * @param part of its form
 */
public record Piece(String id, Batch batch, int number, Part part) {

  /** Every piece of a batch, in the order of their numbers, pots before their lids. */
  public static List<Piece> of(Batch batch, Form form) {
    List<Piece> pieces = new ArrayList<>();
    for (int number = 1; number <= batch.quantity(); number++) {
      String id = String.format(Locale.ROOT, "%s-%03d", batch.id(), number);
      if (form.lid().isEmpty()) {
        pieces.add(new Piece(id, batch, number, Part.POT));
      } else if (batch.lidPlace() == LidPlace.ON) {
        pieces.add(new Piece(id, batch, number, Part.POT_WITH_LID));
      } else {
        pieces.add(new Piece(id, batch, number, Part.POT));
        pieces.add(new Piece(id + "-lid", batch, number, Part.LID));
      }
    }
    return List.copyOf(pieces);
  }

  /**
   * What must go into the firing together or wait together. Pieces with the same answer are one
   * set; a piece with a key of its own belongs to no set.
   */
  public String setKey() {
    return batch.set().map(set -> "set:" + set + "#" + number).orElse(batch.id() + "#" + number);
  }
}
