package shelfful.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One page.
 *
 * @param width in millimetres
 * @param height in millimetres
 * @param layerId the layer it shows, or empty for a sheet about the whole load
 * @param plan how places in the chamber lie on this sheet, where it shows a shelf from above
 * @param marks what to paint, in this order
 */
public record Sheet(
    double width,
    double height,
    Optional<String> layerId,
    Optional<PlanView> plan,
    List<Mark> marks) {
  /** Takes its own copy. */
  public Sheet {
    marks = List.copyOf(marks);
  }
}
