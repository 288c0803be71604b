package shelfful.ware;

import java.util.Optional;
import java.util.Set;
import shelfful.measure.Cone;
import shelfful.measure.Length;

/**
 * A glaze and what it asks of a setting.
 *
 * @param id unique within a studio
 * @param name as the potter says it
 * @param letter one or two letters that stand for it on paper
 * @param colour for the screen, as {@code #rrggbb}; never the only mark of a glaze
 * @param cone it is fired to
 * @param atmosphere it needs, or empty when it takes either
 * @param gap the least distance to other glazed ware where it asks for more than the house rule
 * @param runny it runs: the piece stands on a catcher
 * @param bareFoot how much bare foot it needs; a form with less stands on a catcher
 * @param likes zones it comes out best in; empty when it does not matter
 * @param forbidden zones it must not be fired in
 */
public record Glaze(
    String id,
    String name,
    String letter,
    String colour,
    Cone cone,
    Optional<Atmosphere> atmosphere,
    Optional<Length> gap,
    boolean runny,
    Length bareFoot,
    Set<Zone> likes,
    Set<Zone> forbidden) {
  /** Refuses a glaze that no zone is left for. */
  public Glaze {
    likes = Set.copyOf(likes);
    forbidden = Set.copyOf(forbidden);
    if (forbidden.size() == Zone.values().length) {
      throw new IllegalArgumentException("The glaze " + id + " forbids every zone");
    }
  }

  /** Whether a piece of this form needs a catcher under it in this glaze. */
  public boolean needsCatcherUnder(Form form) {
    return runny || bareFoot.isLongerThan(form.bareFoot());
  }
}
