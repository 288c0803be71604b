package shelfful.edit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.inspect.PlaceFigure;
import shelfful.load.Placement;

/**
 * A piece held over a place of a layer.
 *
 * @param layerId the layer
 * @param place where it would stand
 * @param figures the judge's distances there
 */
public record Tentative(String layerId, Placement place, List<PlaceFigure> figures) {
  /** Takes its own copy. */
  public Tentative {
    figures = List.copyOf(figures);
  }

  /** Whether every distance is kept. */
  public boolean mayStand() {
    return figures.stream().allMatch(PlaceFigure::holds);
  }

  /**
   * The distance with the least to spare: what stops the piece first; empty far from everything.
   */
  public Optional<PlaceFigure> tightest() {
    return figures.stream().min(TIGHTNESS);
  }

  /** The distances that fall short, the worst first. */
  public List<PlaceFigure> faults() {
    return figures.stream().filter(figure -> !figure.holds()).sorted(TIGHTNESS).toList();
  }

  private static final Comparator<PlaceFigure> TIGHTNESS =
      Comparator.comparing(PlaceFigure::holds)
          .thenComparing(PlaceFigure::spare)
          .thenComparing(figure -> figure.rule().ordinal())
          .thenComparing(PlaceFigure::other);
}
