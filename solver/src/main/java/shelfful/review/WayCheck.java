package shelfful.review;

import java.time.LocalDateTime;
import java.util.List;
import shelfful.ware.FiringKind;
import shelfful.week.PlannedFiring;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/**
 * Whether every piece goes its way: no firing it does not need, each once, none before it is ready,
 * and the glaze firing only after the bisque and the pause for glazing.
 */
final class WayCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    for (WareLine line : plan.request().lines()) {
      for (int number = 1; number <= line.batch().quantity(); number++) {
        piece(plan, ways, line, number, findings);
      }
    }
  }

  private static void piece(
      WeekPlan plan, Ways ways, WareLine line, int number, WeekFindings findings) {
    String id = line.batch().id();
    String piece = "Piece " + number + " of batch " + id;
    for (FiringKind kind : FiringKind.values()) {
      List<PlannedFiring> firings = ways.firings(id, number, kind);
      int most = line.needs().contains(kind) ? 1 : 0;
      if (firings.size() > most) {
        String sentence =
            piece + " is in " + firings.size() + " " + kind + " firings, but needs " + most + ".";
        findings.batch(WeekRule.PIECE_FIRED_NEEDLESSLY, firings.get(0).id(), id, sentence);
      }
      LocalDateTime ready = firings.isEmpty() ? null : ready(plan, ways, line, number, kind);
      for (PlannedFiring firing : firings) {
        LocalDateTime loads = firing.times().loads();
        if (ready == null) {
          String sentence = piece + " is glaze fired without a bisque firing.";
          findings.batch(WeekRule.PIECE_NOT_BISQUED, firing.id(), id, sentence);
        } else if (loads.isBefore(ready)) {
          String sentence = piece + " is loaded at " + loads + " but ready only at " + ready + ".";
          findings.batch(WeekRule.PIECE_NOT_READY, firing.id(), id, sentence);
        }
      }
    }
  }

  /** When it can go in; null when it never can, for want of a bisque firing. */
  private static LocalDateTime ready(
      WeekPlan plan, Ways ways, WareLine line, int number, FiringKind kind) {
    boolean first = line.needs().isEmpty() || line.needs().get(0) == kind;
    if (first) {
      return line.firstReady(plan.request().start(), plan.request().pauses());
    }
    List<PlannedFiring> bisque = ways.firings(line.batch().id(), number, FiringKind.BISQUE);
    return bisque.isEmpty()
        ? null
        : bisque.get(0).times().unpacked().plusDays(plan.request().pauses().glazingDays());
  }
}
