package shelfful.ui.hand;

import java.util.Optional;
import java.util.function.Function;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.ui.words.Words;
import shelfful.ui.work.WorkViewModel;

/** What is done to a plan by hand at once, without carrying a piece: out, pins, locks, and back. */
public final class HandCommands {
  private final Words words;
  private final WorkViewModel work;
  private final HandViewModel hand;

  /** Commands for the plan on the desk. */
  public HandCommands(Words words, WorkViewModel work, HandViewModel hand) {
    this.words = words;
    this.work = work;
    this.hand = hand;
  }

  /** Takes a piece out, to wait. */
  public void takeOut(String pieceId) {
    hand.putBack();
    on(
        plan ->
            plan.layerOf(pieceId)
                .map(Layer::id)
                .map(
                    layer ->
                        plan.isLocked(layer)
                            ? words.of("hand.locked", layer)
                            : done(new Edit.TakeOut(reason(pieceId)), "hand.out", pieceId)));
  }

  private LeftOut reason(String pieceId) {
    return new LeftOut(
        pieceId, LeftOut.Reason.TAKEN_OUT, words.of("out.sentence"), words.of("out.mend"));
  }

  /** Pins a piece, or lets it go. */
  public void pin(String pieceId) {
    hand.setDown();
    on(
        plan ->
            plan.layerOf(pieceId)
                .map(
                    layer ->
                        done(
                            new Edit.PinPiece(pieceId, !plan.isPinned(pieceId)),
                            plan.isPinned(pieceId) ? "hand.unpinned" : "hand.pinned",
                            pieceId)));
  }

  /** Lets everything go that is pinned. */
  public void unpinAll() {
    hand.setDown();
    on(plan -> Optional.of(done(new Edit.UnpinAll(), "hand.unpinnedAll", plan.pinned().size())));
  }

  /** Locks a layer, or lets it go. */
  public void lock(String layerId) {
    hand.setDown();
    on(
        plan ->
            plan.load()
                .layer(layerId)
                .map(
                    layer ->
                        done(
                            new Edit.LockLayer(layerId, !plan.isLocked(layerId)),
                            plan.isLocked(layerId) ? "hand.unlockedLayer" : "hand.lockedLayer",
                            layerId)));
  }

  /** Locks every layer, or, when all are, lets them go. */
  public void lockKiln() {
    hand.setDown();
    on(
        plan -> {
          boolean hold = new Edit.LockKiln(true).fits(plan);
          String key = hold ? "hand.lockedKiln" : "hand.unlockedKiln";
          return Optional.of(done(new Edit.LockKiln(hold), key, plan.load().layers().size()));
        });
  }

  /** Takes the last step back, whatever it was done to. */
  public void undo() {
    hand.putBack();
    work.steps().undo().ifPresent(step -> hand.tell(words.of("hand.undone", step.name())));
  }

  /** Does the step again that was taken back last. */
  public void redo() {
    hand.putBack();
    work.steps().redo().ifPresent(step -> hand.tell(words.of("hand.redone", step.name())));
  }

  private String done(Edit edit, String key, Object about) {
    return words.of(work.apply(edit) ? key : "hand.nothing", about);
  }

  private void on(Function<WorkPlan, Optional<String>> step) {
    work.plan().get().flatMap(step).ifPresent(hand::tell);
  }
}
