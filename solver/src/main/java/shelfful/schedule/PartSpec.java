package shelfful.schedule;

import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.LidPlace;

/**
 * What the load planner has to know of a piece: all that tells it from others in one firing.
 *
 * @param formId its form
 * @param glazeId on it in this firing; empty in a bisque firing
 * @param cone its own cone in this firing
 * @param lidPlace where its lid is
 */
record PartSpec(String formId, Optional<String> glazeId, Optional<Cone> cone, LidPlace lidPlace) {

  /** A piece of a batch as it goes into a firing: glaze and cone are those of the glaze firing. */
  static PartSpec of(Batch batch, FiringKind kind) {
    return kind == FiringKind.BISQUE
        ? new PartSpec(batch.formId(), Optional.empty(), Optional.empty(), batch.lidPlace())
        : new PartSpec(batch.formId(), batch.glazeId(), batch.cone(), batch.lidPlace());
  }

  /** A batch of such pieces. */
  Batch batch(
      String id,
      int quantity,
      FiringKind kind,
      Optional<String> set,
      boolean mustGo,
      int priority) {
    return new Batch(
        id,
        formId,
        glazeId,
        quantity,
        kind.goesIn(),
        cone,
        mustGo,
        priority,
        Optional.empty(),
        Optional.empty(),
        set,
        lidPlace);
  }
}
