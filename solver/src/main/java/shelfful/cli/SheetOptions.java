package shelfful.cli;

import picocli.CommandLine.Option;
import shelfful.drawing.PaperSize;
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

  LengthUnit unitOr(LengthUnit studios) {
    return unit == null ? studios : unit;
  }
}
