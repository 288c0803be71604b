package shelfful.cli;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import shelfful.app.LoadLimit;
import shelfful.drawing.Edition;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.PaperSize;
import shelfful.drawing.PdfSurface;
import shelfful.drawing.PhonePage;
import shelfful.drawing.Printing;
import shelfful.drawing.ProgramNote;
import shelfful.drawing.SheetFormat;
import shelfful.drawing.TrueSizeSheets;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

/** Options that say how sheets look and what is written on them besides the plan. */
final class SheetOptions {
  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "a4 or letter. Default: a4.")
  PaperSize paper;

  @Option(names = "--landscape", description = "Turn the paper: the key stands beside the shelf.")
  private boolean landscape;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "millimetres, centimetres or inches. Default: the studio's.")
  LengthUnit unit;

  @Option(
      names = "--revision",
      paramLabel = "TEXT",
      description = "Written at the foot of every page beside the plan's mark.")
  private String revision;

  @Option(
      names = "--printed",
      paramLabel = "DAY",
      description = "The day of printing (2026-05-31), written at the foot of every page.")
  private LocalDate printed;

  @Option(
      names = "--program",
      paramLabel = "TEXT",
      description = "The controller's program, for the cover. Default: a blank to fill in.")
  private String program;

  @Option(
      names = "--hours-up",
      paramLabel = "HOURS",
      description = "Hours of firing, for the cover. Default: a blank to fill in.")
  private String hoursUp;

  @Option(
      names = "--hours-down",
      paramLabel = "HOURS",
      description = "Hours of cooling, for the cover. Default: a blank to fill in.")
  private String hoursDown;

  @Option(
      names = "--no-limit",
      description = "Do not work out how many pieces no setting can exceed; it takes some seconds.")
  private boolean noLimit;

  private InspectedLoad limited;
  private LoadLimit limit;

  /** What no load of the request can exceed, worked out once; empty when it is not wanted. */
  Optional<LoadLimit> limit(InspectedLoad load) {
    if (!noLimit && limited != load) {
      limit = LoadLimit.of(load.load().request());
      limited = load;
    }
    return noLimit ? Optional.empty() : Optional.of(limit);
  }

  /** The loading sheets of a load, as PDF. */
  byte[] pdf(InspectedLoad load) {
    return PdfSurface.bytes(LoadDrawing.of(load, printing(load)));
  }

  /** The page for a telephone, as HTML. */
  byte[] phone(InspectedLoad load) {
    return PhonePage.html(load, printing(load)).getBytes(StandardCharsets.UTF_8);
  }

  /** Some layers, or all, at their true size, as PDF. */
  byte[] trueSize(InspectedLoad load, Set<String> layers) {
    return PdfSurface.bytes(TrueSizeSheets.of(load, printing(load), layers));
  }

  /** All that was asked of the sheets, in the studio's unit where none was named. */
  Printing printing(InspectedLoad load) {
    return new Printing(
        new SheetFormat(paper, landscape),
        unitOr(load.load().request().studio().unit()),
        new Edition(Optional.ofNullable(revision), Optional.ofNullable(printed)),
        new ProgramNote(
            Optional.ofNullable(program),
            Optional.ofNullable(hoursUp),
            Optional.ofNullable(hoursDown)),
        limit(load).map(most -> most.sentence(load.load().placed())));
  }

  LengthUnit unitOr(LengthUnit studios) {
    return unit == null ? studios : unit;
  }
}
