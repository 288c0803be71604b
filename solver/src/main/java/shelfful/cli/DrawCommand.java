package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.PdfSurface;
import shelfful.files.AtomicSave;
import shelfful.files.PlanReader;
import shelfful.files.SaveFailed;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;

/** Draws the loading sheets of a plan. */
@Command(
    name = "draw",
    description = "Draws the loading sheets of a plan that breaks no rule, as PDF.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful draw plans/list-200.plan.json",
      "  shelfful draw plans/list-200.plan.json --paper letter --unit inches --to sheets.pdf"
    })
final class DrawCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
  private Path planFile;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Where the sheets go. Default: beside the plan.")
  private Path target;

  @Mixin private SheetOptions sheets = new SheetOptions();

  DrawCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed {
    Optional<Load> load = new Reading(err).take(PlanReader.read(planFile));
    if (load.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    Inspection inspection = new Inspector().inspect(load.get());
    if (inspection instanceof Inspection.Failed failed) {
      err.println("The plan breaks rules and is not drawn:");
      failed.findings().forEach(finding -> err.println("  " + finding.sentence()));
      return ExitCodes.RULE_BROKEN;
    }
    Path to = target == null ? besidePlan() : target;
    LoadDrawing drawing =
        LoadDrawing.of(
            ((Inspection.Passed) inspection).load(),
            sheets.paper,
            sheets.unitOr(load.get().request().studio().unit()));
    AtomicSave.save(to, PdfSurface.bytes(drawing));
    out.println(to);
    return ExitCodes.DONE;
  }

  private Path besidePlan() {
    String name = planFile.getFileName().toString().replaceFirst("(\\.plan)?\\.json$", "");
    return planFile.resolveSibling(name + ".pdf");
  }
}
