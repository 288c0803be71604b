package shelfful.ware;

/** A batch with one thing different; its pieces keep their ids. */
public final class BatchChange {
  private BatchChange() {}

  /** The same, put first or no longer put first. */
  public static Batch mustGo(Batch batch, boolean mustGo) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        mustGo,
        batch.priority(),
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }

  /** So many pieces of the same at a stage. */
  public static Batch pieces(Batch batch, int quantity, Stage stage) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        quantity,
        stage,
        batch.cone(),
        batch.mustGo(),
        batch.priority(),
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }
}
