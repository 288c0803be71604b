package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;

/**
 * A load that breaks no rule. Only the {@link Inspector} can make one, and only this can be shown,
 * saved or drawn: a load that was never inspected does not compile.
 */
public final class InspectedLoad implements JudgedLoad {
  private final Load load;
  private final List<LayerFigures> figures;
  private final List<Finding> wishes;

  InspectedLoad(Load load, List<LayerFigures> figures, List<Finding> wishes) {
    this.load = load;
    this.figures = List.copyOf(figures);
    this.wishes = List.copyOf(wishes);
  }

  @Override
  public Load load() {
    return load;
  }

  @Override
  public List<LayerFigures> figures() {
    return figures;
  }

  /** What was measured on one layer. */
  public LayerFigures figures(String layerId) {
    return figures.stream()
        .filter(row -> row.layerId().equals(layerId))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("The load has no layer " + layerId));
  }

  @Override
  public List<Finding> findings() {
    return wishes;
  }

  /** Wishes of the house that are not met; none of them forbids the load. */
  public List<Finding> wishes() {
    return wishes;
  }
}
