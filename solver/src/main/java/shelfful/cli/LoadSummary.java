package shelfful.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.app.LoadLimit;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.LayerFigures;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;
import shelfful.ware.Piece;

/** A load in a few lines of text. */
final class LoadSummary {
  private final InspectedLoad inspected;
  private final LengthUnit unit;
  private final Map<String, Piece> pieces;

  private LoadSummary(InspectedLoad inspected, LengthUnit unit) {
    this.inspected = inspected;
    this.unit = unit;
    this.pieces =
        inspected.load().request().pieces().stream()
            .collect(Collectors.toMap(Piece::id, piece -> piece));
  }

  static List<String> of(InspectedLoad load, Optional<LoadLimit> limit, LengthUnit unit) {
    LoadSummary summary = new LoadSummary(load, unit);
    List<String> lines = new ArrayList<>();
    lines.add(summary.heading());
    limit.ifPresent(most -> lines.add(most.sentence(load.load().placed())));
    lines.add("");
    lines.addAll(summary.layers());
    if (!load.load().leftOut().isEmpty()) {
      lines.add("");
      lines.add("Waiting");
      lines.addAll(summary.waiting());
    }
    return lines;
  }

  private String heading() {
    Load load = inspected.load();
    return String.format(
        Locale.ROOT,
        "%d of %d pieces in, %d wait. %s, column plan %s, cone %s.",
        load.placed(),
        pieces.size(),
        load.leftOut().size(),
        load.request().kiln().name(),
        load.columnPlanId(),
        load.request().firing().cone().number());
  }

  private List<String> layers() {
    List<String> lines = new ArrayList<>();
    for (Layer layer : inspected.load().layers()) {
      LayerFigures figures = inspected.figures(layer.id());
      lines.add(
          String.format(
              Locale.ROOT,
              "  %-4s %-12s %2d pieces   shelf top at %-9s clear %-9s %s",
              layer.id(),
              layer.columnId() + " " + layer.level(),
              layer.placements().size(),
              LengthText.write(layer.z(), unit),
              LengthText.write(figures.clearHeight(), unit),
              figures
                  .smallestGap()
                  .map(gap -> "smallest gap " + LengthText.write(gap, unit))
                  .orElse("")));
    }
    return lines;
  }

  private List<String> waiting() {
    Map<String, Integer> counted = new LinkedHashMap<>();
    for (LeftOut out : inspected.load().leftOut()) {
      Piece piece = pieces.get(out.pieceId());
      String what =
          String.format(
              Locale.ROOT,
              "%s %s%s: %s %s",
              piece.batch().id(),
              piece.batch().formId(),
              piece.batch().glazeId().map(id -> " in " + id).orElse(""),
              out.sentence(),
              out.mend());
      counted.merge(what, 1, Integer::sum);
    }
    List<String> lines = new ArrayList<>();
    counted.forEach(
        (what, count) -> lines.add(String.format(Locale.ROOT, "  %3d x %s", count, what)));
    return lines;
  }
}
