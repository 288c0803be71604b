package shelfful.inspect;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Placement;

/** Every piece is placed once or waits once with a reason. */
final class AccountCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Map<String, Integer> placed = new HashMap<>();
    for (Layer layer : setting.load().layers()) {
      for (Placement placement : layer.placements()) {
        placed.merge(placement.pieceId(), 1, Integer::sum);
      }
    }
    Map<String, Integer> waiting = new HashMap<>();
    for (LeftOut leftOut : setting.load().leftOut()) {
      waiting.merge(leftOut.pieceId(), 1, Integer::sum);
      if (leftOut.sentence().isBlank()) {
        add(findings, leftOut.pieceId(), "waits without a reason in words. Say why it waits.");
      }
    }
    for (String id : setting.list().keySet()) {
      judge(id, placed.getOrDefault(id, 0), waiting.getOrDefault(id, 0), findings);
    }
  }

  private static void judge(String id, int placed, int waiting, Findings findings) {
    if (placed + waiting == 0) {
      add(findings, id, "is lost: neither in the load nor waiting. Place it or let it wait.");
    } else if (placed > 0 && waiting > 0) {
      add(findings, id, "is in the load and waits as well. Take it out of one of the two.");
    } else if (placed > 1) {
      add(
          findings,
          id,
          String.format(Locale.ROOT, "stands in the load %d times. Leave it in once.", placed));
    } else if (waiting > 1) {
      add(findings, id, String.format(Locale.ROOT, "waits %d times. Let it wait once.", waiting));
    }
  }

  private static void add(Findings findings, String id, String what) {
    findings.add(Rule.PIECE_ACCOUNTED_FOR_ONCE, "", List.of(id), id + " " + what);
  }
}
