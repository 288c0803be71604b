package shelfful.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.drawing.FiguresDrawing;
import shelfful.drawing.PaperSize;
import shelfful.drawing.PdfSurface;
import shelfful.figures.FiringPrices;
import shelfful.figures.PotteryFigures;
import shelfful.files.AtomicSave;
import shelfful.files.FigureTable;
import shelfful.files.SaveFailed;
import shelfful.record.UnpackedFiring;

/** Prints figures of all firings kept, as tables. */
@Command(
    name = "figures",
    description = "Pieces, fill, losses and cost of every firing kept, as a table (CSV).",
    mixinStandardHelpOptions = true)
final class FiguresCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "Where firings are kept.")
  private Path folder;

  @Option(names = "--causes", description = "What was wrong with pieces, instead of firings.")
  private boolean causes;

  @Option(names = "--to", paramLabel = "FILE", description = "Where the table goes. Default: here.")
  private Path target;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Draw the figures on a sheet of paper (PDF) instead.")
  private Path sheet;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "a4 or letter. Default: a4.")
  private PaperSize paper;

  @Option(names = "--per-kwh", paramLabel = "MONEY", description = "What a kilowatt-hour costs.")
  private Double perKwh;

  @Option(
      names = "--per-firing",
      paramLabel = "MONEY",
      description = "What a firing costs besides.")
  private Double perFiring;

  FiguresCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws IOException, SaveFailed {
    if (!isPrice(perKwh) || !isPrice(perFiring)) {
      err.println("--per-kwh and --per-firing must be numbers of at least 0.");
      return ExitCodes.BAD_INPUT;
    }
    Optional<List<UnpackedFiring>> kept = new Reading(err).take(new KeepFirings(folder).all());
    if (kept.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    PotteryFigures figures =
        PotteryFigures.of(kept.get(), new FiringPrices(price(perKwh), price(perFiring)));
    if (sheet != null) {
      String name = folder.toAbsolutePath().normalize().getFileName().toString();
      AtomicSave.save(sheet, PdfSurface.bytes(FiguresDrawing.of(figures, name, paper)));
      out.println(sheet);
      return ExitCodes.DONE;
    }
    return table(figures);
  }

  private int table(PotteryFigures figures) throws SaveFailed {
    List<String> headings =
        causes ? PotteryFigures.causeHeadings() : PotteryFigures.firingHeadings();
    List<List<String>> rows = causes ? figures.causeRows() : figures.firingRows();
    if (target == null) {
      byte[] bytes = FigureTable.bytes(headings, rows);
      out.writeBytes(bytes);
      out.flush();
    } else {
      FigureTable.write(headings, rows, target);
      out.println(target);
    }
    return ExitCodes.DONE;
  }

  private static boolean isPrice(Double price) {
    return price == null || price >= 0 && price < Double.MAX_VALUE;
  }

  private static OptionalDouble price(Double price) {
    return price == null ? OptionalDouble.empty() : OptionalDouble.of(price);
  }
}
