package shelfful.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One page.
 *
 * @param width in millimetres
 * @param height in millimetres
 * @param layerIds the layers it shows, several where they are alike; none for a sheet about the
 *     whole load
 * @param plan how places in the chamber lie on this sheet, where it shows a shelf from above
 * @param marks what to paint, in this order
 */
public record Sheet(
    double width, double height, List<String> layerIds, Optional<PlanView> plan, List<Mark> marks) {
  /** Takes its own copies. */
  public Sheet {
    layerIds = List.copyOf(layerIds);
    marks = List.copyOf(marks);
  }

  /** A sheet of one layer, or of none. */
  public Sheet(
      double width,
      double height,
      Optional<String> layerId,
      Optional<PlanView> plan,
      List<Mark> marks) {
    this(width, height, layerId.stream().toList(), plan, marks);
  }

  /** The layer it shows, the first of those that are alike. */
  public Optional<String> layerId() {
    return layerIds.stream().findFirst();
  }
}
