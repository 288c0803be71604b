package shelfful.inspect.fault;

import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.ware.Batch;
import shelfful.ware.Stage;

/** Batches with one thing changed. */
final class BatchEdit {
  private BatchEdit() {}

  static Batch ofSet(Batch old, String set) {
    return of(old, old.glazeId(), old.stage(), old.cone(), Optional.of(set));
  }

  static Batch at(Batch old, Stage stage) {
    return of(old, old.glazeId(), stage, old.cone(), old.set());
  }

  static Batch forCone(Batch old, Cone cone) {
    return of(old, old.glazeId(), old.stage(), Optional.of(cone), old.set());
  }

  static Batch glazed(Batch old, String glazeId) {
    return of(old, Optional.of(glazeId), old.stage(), old.cone(), old.set());
  }

  private static Batch of(
      Batch old, Optional<String> glazeId, Stage stage, Optional<Cone> cone, Optional<String> set) {
    return new Batch(
        old.id(),
        old.formId(),
        glazeId,
        old.quantity(),
        stage,
        cone,
        old.mustGo(),
        old.priority(),
        old.due(),
        old.order(),
        set,
        old.lidPlace());
  }
}
