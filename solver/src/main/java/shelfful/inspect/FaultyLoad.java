package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;

/**
 * A load that breaks a rule: work in hand. It can be looked at, with its faults, but no plan file
 * and no paper is made of it.
 */
public final class FaultyLoad implements JudgedLoad {
  private final Load load;
  private final List<LayerFigures> figures;
  private final List<Finding> findings;

  FaultyLoad(Load load, List<LayerFigures> figures, List<Finding> findings) {
    this.load = load;
    this.figures = List.copyOf(figures);
    this.findings = List.copyOf(findings);
  }

  @Override
  public Load load() {
    return load;
  }

  @Override
  public List<LayerFigures> figures() {
    return figures;
  }

  @Override
  public List<Finding> findings() {
    return findings;
  }
}
