package shelfful.app;

import java.util.List;
import shelfful.inspect.Finding;
import shelfful.load.Load;

/**
 * A load that the planner made and the judge refused, with all that is needed to find out why.
 *
 * @param load that was refused; it must not be shown, saved as a plan or drawn
 * @param findings why
 */
public record FaultReport(Load load, List<Finding> findings) {
  /** Takes its own copy. */
  public FaultReport {
    findings = List.copyOf(findings);
  }

  /** The report as lines of text, without names of pieces' owners or of folders. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append("A load was refused by the judge. This is a fault of the program.\n");
    text.append("Column plan ").append(load.columnPlanId());
    text.append(", seed ").append(load.request().seed());
    text.append(", steps ").append(load.request().steps()).append('\n');
    for (Finding finding : findings) {
      text.append(finding.severity()).append(' ').append(finding.rule());
      text.append(' ').append(finding.layerId()).append(' ').append(finding.pieceIds());
      text.append(": ").append(finding.sentence()).append('\n');
    }
    return text.toString();
  }
}
