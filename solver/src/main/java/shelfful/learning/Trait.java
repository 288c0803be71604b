package shelfful.learning;

import java.util.Locale;
import java.util.function.Function;

/**
 * By what pieces are put together to be compared with all others; a glaze at one height with the
 * same glaze at other heights, for else a poor glaze would be held against every height.
 */
public enum Trait {
  GLAZE(one -> glaze(one)),
  FORM(one -> one.piece().formId()),
  HEIGHT(one -> word(one.piece().zone())),
  RING(one -> word(one.piece().ring())),
  PLACE(one -> word(one.piece().zone()) + ", " + word(one.piece().ring())),
  GLAZE_AT_HEIGHT(one -> glaze(one) + ", " + word(one.piece().zone()));

  /** In place of the id of a glaze where ware has none; no id begins with a bracket. */
  public static final String NO_GLAZE = "(no glaze)";

  private final Function<Sighting, String> cell;

  Trait(Function<Sighting, String> cell) {
    this.cell = cell;
  }

  /** Which cell a piece belongs to. */
  String cell(Sighting one) {
    return cell.apply(one);
  }

  /** Whether a piece is in a cell or in what the cell is compared with. */
  boolean compares(Sighting one, String cell) {
    return this != GLAZE_AT_HEIGHT || cell.startsWith(glaze(one) + ", ");
  }

  private static String glaze(Sighting one) {
    return one.piece().glazeId().orElse(NO_GLAZE);
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
