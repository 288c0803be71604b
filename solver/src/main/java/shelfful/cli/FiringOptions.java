package shelfful.cli;

import java.time.LocalDate;
import picocli.CommandLine.Option;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/** Options that say what is fired, where and how. */
final class FiringOptions {
  @Option(
      names = "--kiln",
      paramLabel = "ID",
      description = "The kiln. Default: the studio's first.")
  String kiln;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      defaultValue = "GLAZE",
      description = "glaze or bisque. Default: glaze.")
  FiringKind kind;

  @Option(
      names = "--cone",
      paramLabel = "CONE",
      description = "The cone. Default: the one most pieces want.")
  String cone;

  @Option(
      names = "--cone-tolerance",
      paramLabel = "N",
      defaultValue = "0",
      description = "How many cones a piece's own may differ. Default: 0.")
  int coneTolerance;

  @Option(
      names = "--atmosphere",
      paramLabel = "AIR",
      defaultValue = "OXIDATION",
      description = "oxidation or reduction. Default: oxidation.")
  Atmosphere atmosphere;

  @Option(
      names = "--columns",
      paramLabel = "ID",
      description = "The column plan. Default: the best of the kiln's.")
  String columns;

  @Option(
      names = "--day",
      paramLabel = "DATE",
      description = "Day of the firing, for due dates, as 2026-06-01. Default: today.")
  LocalDate day;
}
