package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;

/** What the checks have found so far, in the order they found it. */
final class Findings {
  private final List<Finding> all = new ArrayList<>();

  /** Something about the whole load. */
  void add(Rule rule, String sentence) {
    add(rule, "", List.of(), sentence);
  }

  /** Something about a layer. */
  void add(Rule rule, String layerId, String sentence) {
    add(rule, layerId, List.of(), sentence);
  }

  void add(Rule rule, String layerId, List<String> pieceIds, String sentence) {
    all.add(new Finding(rule.id(), rule.severity(), layerId, pieceIds, sentence));
  }

  /** Those of one severity. */
  List<Finding> of(Finding.Severity severity) {
    return all.stream().filter(finding -> finding.severity() == severity).toList();
  }

  /** Broken rules first, then wishes. */
  List<Finding> brokenFirst() {
    List<Finding> sorted = new ArrayList<>(of(Finding.Severity.BREAKS));
    sorted.addAll(of(Finding.Severity.WISH));
    return sorted;
  }

  boolean isBroken() {
    return all.stream().anyMatch(finding -> finding.severity() == Finding.Severity.BREAKS);
  }
}
