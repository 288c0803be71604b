package shelfful.app;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;

/**
 * The firing that a list asks for when nobody says otherwise: the first kiln, and the cone most
 * pieces want.
 */
public final class UsualFiring {
  private UsualFiring() {}

  /**
   * The usual firing of a kind, or empty when nothing on the list names a cone.
   *
   * @param kiln to fire in
   */
  public static Optional<Firing> of(
      Studio studio, List<Batch> batches, Kiln kiln, FiringKind kind) {
    return mostWanted(studio, batches, kind)
        .map(cone -> new Firing(kiln.id(), kind, cone, 0, Atmosphere.OXIDATION));
  }

  private static Optional<Cone> mostWanted(Studio studio, List<Batch> batches, FiringKind kind) {
    Map<Cone, Integer> wanted = new TreeMap<>();
    for (Batch batch : batches) {
      Optional<Cone> cone = batch.cone();
      if (cone.isEmpty() && kind == FiringKind.GLAZE) {
        cone = batch.glazeId().flatMap(studio::glaze).map(Glaze::cone);
      }
      if (batch.stage() == kind.goesIn()) {
        cone.ifPresent(c -> wanted.merge(c, batch.quantity(), Integer::sum));
      }
    }
    return wanted.entrySet().stream()
        .max(Comparator.comparingInt(Map.Entry::getValue))
        .map(Map.Entry::getKey);
  }
}
