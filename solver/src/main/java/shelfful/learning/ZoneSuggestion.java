package shelfful.learning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;
import shelfful.ware.Glaze;
import shelfful.ware.Zone;

/**
 * That a glaze had better keep out of a zone, as the records show it. Nothing changes until the
 * potter accepts it.
 *
 * @param glazeId the glaze
 * @param zone it comes out worse in
 * @param sentence why, with its figures
 */
public record ZoneSuggestion(String glazeId, Zone zone, String sentence) {

  /**
   * What a look at {@link Trait#GLAZE_AT_HEIGHT} suggests; empty where nothing is beyond chance.
   * Ware without a glaze has none whose wish could be changed.
   *
   * @param flaw what was counted
   */
  public static List<ZoneSuggestion> from(List<CellRate> rates, Flaw flaw) {
    List<ZoneSuggestion> suggestions = new ArrayList<>();
    for (CellRate rate : rates) {
      if (rate.trait() == Trait.GLAZE_AT_HEIGHT && rate.verdict() == Verdict.WORSE) {
        int comma = rate.cell().lastIndexOf(", ");
        Zone zone = Zone.valueOf(rate.cell().substring(comma + 2).toUpperCase(Locale.ROOT));
        String glaze = rate.cell().substring(0, comma);
        if (!glaze.equals(Trait.NO_GLAZE)) {
          suggestions.add(new ZoneSuggestion(glaze, zone, sentence(rate, flaw, glaze, zone)));
        }
      }
    }
    return List.copyOf(suggestions);
  }

  private static String sentence(CellRate rate, Flaw flaw, String glaze, Zone zone) {
    return String.format(
        Locale.ROOT,
        "%s at the %s: %d of %d %s, %.0f %% (95 %% interval %.0f to %.0f %%); at other"
            + " heights %d of %d. Keep it out of the %s where that costs nothing?",
        glaze,
        zone.name().toLowerCase(Locale.ROOT),
        rate.proportion().flawed(),
        rate.proportion().of(),
        flaw.word(),
        100 * rate.proportion().rate(),
        100 * rate.interval().low(),
        100 * rate.interval().high(),
        rate.rest().flawed(),
        rate.rest().of(),
        zone.name().toLowerCase(Locale.ROOT));
  }

  /**
   * The studio in which the glaze likes the other zones: a wish that planning weighs, not a rule.
   * The same studio when it lacks the glaze, or when no zone would be left to like.
   */
  public Studio accepted(Studio studio) {
    return StudioChange.glazes(
        studio,
        studio.glazes().stream()
            .map(glaze -> glaze.id().equals(glazeId) ? liking(glaze) : glaze)
            .toList());
  }

  private Glaze liking(Glaze glaze) {
    Set<Zone> likes =
        glaze.likes().isEmpty() ? EnumSet.allOf(Zone.class) : EnumSet.copyOf(glaze.likes());
    likes.remove(zone);
    likes.removeAll(glaze.forbidden());
    if (likes.isEmpty()) {
      return glaze;
    }
    return new Glaze(
        glaze.id(),
        glaze.name(),
        glaze.letter(),
        glaze.colour(),
        glaze.cone(),
        glaze.atmosphere(),
        glaze.gap(),
        glaze.runny(),
        glaze.bareFoot(),
        likes,
        glaze.forbidden());
  }
}
