package shelfful.planning;

import shelfful.ware.Batch;
import shelfful.ware.BatchChange;
import shelfful.ware.Stage;

/** Changes to a plain batch. */
final class PlainBatch {
  private PlainBatch() {}

  /** The same, not yet fired to bisque. */
  static Batch dry(Batch batch) {
    return BatchChange.pieces(batch, batch.quantity(), Stage.BONE_DRY);
  }

  static Batch priority(Batch batch, int priority) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        batch.mustGo(),
        priority,
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }
}
