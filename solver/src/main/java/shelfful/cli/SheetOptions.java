package shelfful.cli;

import picocli.CommandLine.Option;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.PaperSize;
import shelfful.drawing.PdfSurface;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

/** Options that say how sheets look. */
final class SheetOptions {
  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "a4 or letter. Default: a4.")
  PaperSize paper;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "millimetres, centimetres or inches. Default: the studio's.")
  LengthUnit unit;

  /** The loading sheets of a load, as PDF. */
  byte[] pdf(InspectedLoad load) {
    LengthUnit studios = load.load().request().studio().unit();
    return PdfSurface.bytes(LoadDrawing.of(load, paper, unitOr(studios)));
  }

  LengthUnit unitOr(LengthUnit studios) {
    return unit == null ? studios : unit;
  }
}
