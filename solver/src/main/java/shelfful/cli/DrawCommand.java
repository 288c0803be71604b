package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.OpenAPlan;
import shelfful.app.Opened;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;

/** Draws the loading sheets of a plan. */
@Command(
    name = "draw",
    description = "Draws the loading sheets of a plan that breaks no rule, as PDF.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful draw plans/list-200.plan.json",
      "  shelfful draw plans/list-200.plan.json --paper letter --unit inches --to sheets.pdf",
      "  shelfful draw plans/list-200.plan.json --landscape --phone sheets.html",
      "  shelfful draw plans/list-200.plan.json --true-size shelf.pdf --layer L1"
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

  @Option(
      names = "--phone",
      paramLabel = "FILE",
      description = "Where a page for a phone goes (HTML). Default: none is made.")
  private Path phone;

  @Option(
      names = "--true-size",
      paramLabel = "FILE",
      description =
          "Where shelves at their true size go (PDF), over several pages to cut and join. Default:"
              + " none are made.")
  private Path trueSize;

  @Option(
      names = "--layer",
      paramLabel = "LAYER",
      description = "The layers to draw at true size, for instance L2; may be given again.")
  private Set<String> layers = new TreeSet<>();

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
    return drawn(ready.value());
  }

  private int drawn(InspectedLoad load) throws SaveFailed {
    for (String layer : layers) {
      if (load.load().layer(layer).isEmpty()) {
        err.println("--layer " + layer + ": the plan has no such layer; it has " + names(load));
        return ExitCodes.BAD_INPUT;
      }
    }
    Path to = target == null ? PlanFiles.beside(planFile, ".pdf") : target;
    AtomicSave.save(to, sheets.pdf(load));
    sheets.limit(load).ifPresent(most -> err.println(most.sentence(load.load().placed())));
    out.println(to);
    if (phone != null) {
      AtomicSave.save(phone, sheets.phone(load));
      out.println(phone);
    }
    if (trueSize != null) {
      AtomicSave.save(trueSize, sheets.trueSize(load, layers));
      out.println(trueSize);
    }
    return ExitCodes.DONE;
  }

  private static String names(InspectedLoad load) {
    return load.load().layers().stream().map(Layer::id).collect(Collectors.joining(", "));
  }
}
