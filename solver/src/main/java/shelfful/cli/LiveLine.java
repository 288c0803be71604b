package shelfful.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import shelfful.app.FaultReport;
import shelfful.app.PlanListener;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;

/** Tells how planning goes: one line that is written over on a terminal, plain lines elsewhere. */
final class LiveLine implements PlanListener {
  private final PrintStream err;
  private final boolean quiet;
  private final boolean terminal;
  private final int pieces;
  private final Path folder;
  private String said = "";

  LiveLine(PrintStream err, boolean quiet, int pieces, Path folder) {
    this.err = err;
    this.quiet = quiet;
    this.terminal = System.console() != null;
    this.pieces = pieces;
    this.folder = folder;
  }

  @Override
  public void better(InspectedLoad load) {
    String words =
        String.format(
            Locale.ROOT,
            "%d of %d in on %d shelves",
            load.load().placed(),
            pieces,
            load.load().layers().size());
    if (quiet || words.equals(said)) {
      return;
    }
    said = words;
    if (terminal) {
      err.print("\r" + words + "   (Ctrl-C keeps the best so far) ");
      err.flush();
    } else {
      err.println(words);
    }
  }

  @Override
  public void refused(FaultReport report) {
    Path file = folder.resolve("fault-report.txt");
    try {
      AtomicSave.save(file, report.text().getBytes(StandardCharsets.UTF_8));
      err.println("The judge refused a load; it was dropped. Report: " + file);
    } catch (SaveFailed unsaved) {
      err.println("The judge refused a load; it was dropped. " + report.text());
      err.println(unsaved.sentence());
    }
  }

  void end() {
    if (terminal && !quiet && !said.isEmpty()) {
      err.println();
    }
  }
}
