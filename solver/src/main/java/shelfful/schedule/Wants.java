package shelfful.schedule;

import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;

/**
 * What a batch asks of a firing. In a bisque firing it asks nothing: its cone is that of the glaze
 * firing.
 *
 * @param cone if it asks for one
 * @param atmosphere if it asks for one
 */
record Wants(Optional<Cone> cone, Optional<Atmosphere> atmosphere) {

  static Wants of(Batch batch, FiringKind kind, Studio studio) {
    if (kind == FiringKind.BISQUE) {
      return new Wants(Optional.empty(), Optional.empty());
    }
    Optional<Glaze> glaze = batch.glazeId().flatMap(studio::glaze);
    return new Wants(
        batch.cone().or(() -> glaze.map(Glaze::cone)), glaze.flatMap(Glaze::atmosphere));
  }

  boolean areMetBy(KilnProgram program) {
    return program.program().takes(cone, atmosphere);
  }
}
