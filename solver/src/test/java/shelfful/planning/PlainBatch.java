package shelfful.planning;

import shelfful.ware.Batch;
import shelfful.ware.Stage;

/** Changes to a plain batch. */
final class PlainBatch {
  private PlainBatch() {}

  /** The same, not yet fired to bisque. */
  static Batch dry(Batch batch) {
    return with(batch, Stage.BONE_DRY, batch.priority());
  }

  static Batch priority(Batch batch, int priority) {
    return with(batch, batch.stage(), priority);
  }

  private static Batch with(Batch batch, Stage stage, int priority) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        stage,
        batch.cone(),
        batch.mustGo(),
        priority,
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }
}
