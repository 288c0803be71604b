package shelfful.app;

import java.nio.file.Path;
import java.util.List;
import shelfful.files.PlanReader;
import shelfful.files.ReadResult;
import shelfful.inspect.Finding;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;

/**
 * Opens a plan file: read, then inspected; a plan that breaks a rule is refused with every reason.
 */
public final class OpenAPlan {
  private OpenAPlan() {}

  /** Opens a file; never throws for what is in it, nor when it is not there. */
  public static Opened<InspectedLoad> open(Path file) {
    ReadResult<Load> result = PlanReader.read(file);
    List<String> problems = result.sentences();
    return result
        .found()
        .map(load -> judged(load, problems))
        .orElseGet(() -> new Opened.Refused<>(false, problems));
  }

  private static Opened<InspectedLoad> judged(Load load, List<String> notes) {
    Inspection inspection = new Inspector().inspect(load);
    if (inspection instanceof Inspection.Passed passed) {
      return new Opened.Ready<>(passed.load(), notes);
    }
    List<Finding> findings = ((Inspection.Failed) inspection).findings();
    return new Opened.Refused<>(true, findings.stream().map(Finding::sentence).toList());
  }
}
