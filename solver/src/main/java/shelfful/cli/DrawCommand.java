package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.OpenAPlan;
import shelfful.app.Opened;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;

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
    Opened<InspectedLoad> opened = OpenAPlan.open(planFile);
    if (opened instanceof Opened.Refused<InspectedLoad> refused) {
      if (refused.breaksRules()) {
        err.println("The plan breaks rules and is not drawn:");
      }
      refused.sentences().forEach(err::println);
      return refused.breaksRules() ? ExitCodes.RULE_BROKEN : ExitCodes.BAD_INPUT;
    }
    Opened.Ready<InspectedLoad> ready = (Opened.Ready<InspectedLoad>) opened;
    ready.notes().forEach(err::println);
    Path to = target == null ? besidePlan() : target;
    AtomicSave.save(to, sheets.pdf(ready.value()));
    out.println(to);
    return ExitCodes.DONE;
  }

  private Path besidePlan() {
    String name = planFile.getFileName().toString().replaceFirst("(\\.plan)?\\.json$", "");
    return planFile.resolveSibling(name + ".pdf");
  }
}
