package shelfful.inspect;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.StandingPost;

/**
 * Names that no reading of a single thing can judge: twice the same, or leading to nothing in the
 * load itself.
 */
final class NameCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Optional<String> wanted = setting.request().columnPlanId();
    if (wanted.isPresent() && !wanted.get().equals(setting.load().columnPlanId())) {
      findings.add(
          Rule.IDS_KNOWN_AND_UNIQUE,
          String.format(
              Locale.ROOT,
              "The column plan %s was asked for, but the load uses %s. Plan again with the one asked for.",
              wanted.get(),
              setting.load().columnPlanId()));
    }
    Set<String> layerIds = layerIds(setting, findings);
    for (StandingPost post : setting.load().posts()) {
      for (String layerId : post.carries()) {
        if (!layerIds.contains(layerId)) {
          findings.add(
              Rule.IDS_KNOWN_AND_UNIQUE,
              layerId,
              String.format(
                  Locale.ROOT,
                  "A post carries %s, but the load has no such layer. Correct the name.",
                  layerId));
        }
      }
    }
    for (LeftOut leftOut : setting.load().leftOut()) {
      if (!setting.list().containsKey(leftOut.pieceId())) {
        findings.add(
            Rule.IDS_KNOWN_AND_UNIQUE,
            "",
            List.of(leftOut.pieceId()),
            String.format(
                Locale.ROOT,
                "%s waits, but is not on the list. Correct the name.",
                leftOut.pieceId()));
      }
    }
  }

  private static Set<String> layerIds(Setting setting, Findings findings) {
    Set<String> ids = new HashSet<>();
    for (Layer layer : setting.load().layers()) {
      if (!ids.add(layer.id())) {
        findings.add(
            Rule.IDS_KNOWN_AND_UNIQUE,
            layer.id(),
            String.format(
                Locale.ROOT, "Two layers have the id %s. Give each one of its own.", layer.id()));
      }
    }
    return ids;
  }
}
