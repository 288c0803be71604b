package shelfful.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is found. */
final class WeekFindings {
  private final List<WeekFinding> all = new ArrayList<>();

  void firing(WeekRule rule, String firingId, String sentence) {
    all.add(new WeekFinding(rule.id(), rule.severity(), firingId, "", sentence));
  }

  void batch(WeekRule rule, String firingId, String batchId, String sentence) {
    all.add(new WeekFinding(rule.id(), rule.severity(), firingId, batchId, sentence));
  }

  boolean isBroken() {
    return all.stream().anyMatch(f -> f.severity() == WeekFinding.Severity.BREAKS);
  }

  List<WeekFinding> brokenFirst() {
    List<WeekFinding> ordered = new ArrayList<>(all);
    ordered.sort(Comparator.comparing(WeekFinding::severity));
    return ordered;
  }
}
