package shelfful.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shelfful.ware.Glaze;
import shelfful.ware.Zone;

/**
 * Glazes are in no zone they forbid and, if it can be, in one they like; layers are as high as
 * wished.
 */
final class ZoneCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (LayerSpace space : LayerSpace.of(setting)) {
      Map<Glaze, List<String>> byGlaze = new LinkedHashMap<>();
      for (StandingPiece piece : setting.piecesOn(space.shelf())) {
        piece
            .glaze()
            .ifPresent(
                glaze -> byGlaze.computeIfAbsent(glaze, key -> new ArrayList<>()).add(piece.id()));
      }
      byGlaze.forEach((glaze, ids) -> zone(space, glaze, ids, findings));
      height(setting, space, findings);
    }
  }

  private static void zone(LayerSpace space, Glaze glaze, List<String> ids, Findings findings) {
    Zone zone = space.zone();
    if (glaze.forbidden().contains(zone)) {
      findings.add(
          Rule.ZONE_FORBIDDEN,
          space.shelf().id(),
          ids,
          String.format(
              Locale.ROOT,
              "%s may not be fired at the %s, where layer %s is: %s. Move them to another layer.",
              glaze.name(),
              words(zone),
              space.shelf().id(),
              Wording.names(ids)));
    } else if (!glaze.likes().isEmpty() && !glaze.likes().contains(zone)) {
      findings.add(
          Rule.ZONE_NOT_LIKED,
          space.shelf().id(),
          ids,
          String.format(
              Locale.ROOT,
              "%s does not come out best at the %s, where layer %s is: %s.",
              glaze.name(),
              words(zone),
              space.shelf().id(),
              Wording.names(ids)));
    }
  }

  private static void height(Setting setting, LayerSpace space, Findings findings) {
    long wished = setting.clearances().leastShelfToShelf().micrometres();
    if (space.underShelf() && space.clearHeight() < wished) {
      findings.add(
          Rule.LAYER_LOWER_THAN_WISHED,
          space.shelf().id(),
          String.format(
              Locale.ROOT,
              "The clear height of layer %s is %s for even heat.",
              space.shelf().id(),
              setting.wording().butNeeds(space.clearHeight(), wished)));
    }
  }

  private static String words(Zone zone) {
    return zone.name().toLowerCase(Locale.ROOT);
  }
}
