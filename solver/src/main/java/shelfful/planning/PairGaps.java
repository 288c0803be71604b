package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.studio.Clearances;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart.Apartness;

/** The gap two kinds must keep, without their tolerances. */
final class PairGaps {
  private final LoadRequest request;

  PairGaps(LoadRequest request) {
    this.request = request;
  }

  /** Row and column by kind index, in millimetres. */
  double[][] between(List<WareKind> kinds) {
    double[][] gaps = new double[kinds.size()][kinds.size()];
    for (WareKind a : kinds) {
      for (WareKind b : kinds) {
        gaps[a.index()][b.index()] = between(a, b).millimetres() + Margin.FOR_ROUNDING;
      }
    }
    return gaps;
  }

  /** The widest gap anything in this firing asks for on neighbouring shelves, in millimetres. */
  double widest(List<WareKind> kinds) {
    return kinds.stream()
        .map(kind -> gap(kind, kind))
        .reduce(Length.ZERO, Length::longer)
        .millimetres();
  }

  private Length between(WareKind a, WareKind b) {
    return Length.longer(gap(a, b), keptApart(a, b));
  }

  private Length gap(WareKind a, WareKind b) {
    Clearances house = request.studio().rules().clearances();
    if (request.firing().kind() == FiringKind.BISQUE) {
      return house.bisqueToBisque();
    }
    return Length.longer(Length.longer(ownGap(a), ownGap(b)), house.glazedToGlazed());
  }

  private Length ownGap(WareKind kind) {
    return kind.glazeId().flatMap(request.studio()::glaze).flatMap(Glaze::gap).orElse(Length.ZERO);
  }

  private Length keptApart(WareKind a, WareKind b) {
    Optional<String> one = a.glazeId();
    Optional<String> other = b.glazeId();
    if (one.isEmpty() || other.isEmpty()) {
      return Length.ZERO;
    }
    return request.studio().rules().keptApart().stream()
        .filter(rule -> rule.apartness() == Apartness.BY_DISTANCE)
        .filter(rule -> rule.isAbout(one.get(), other.get()))
        .map(rule -> rule.distance().orElseThrow())
        .reduce(Length.ZERO, Length::longer);
  }
}
