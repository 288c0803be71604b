package shelfful.ui.hand;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.edit.Edit;
import shelfful.edit.Hand;
import shelfful.edit.Tentative;
import shelfful.edit.WorkPlan;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;
import shelfful.ui.words.Words;
import shelfful.ui.work.WorkViewModel;

/**
 * One piece in the hand: the mouse, a click and another click, and the keys all carry it in the
 * same way. Nothing changes until it is set down, which is one step of the history.
 */
public final class HandViewModel {
  private final Words words;
  private final WorkViewModel work;
  private final Speech speech;
  private final ReadOnlyObjectWrapper<Optional<Held>> held =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private Optional<Hand> hand = Optional.empty();
  private boolean follows;

  /**
   * An empty hand.
   *
   * @param speech how figures and pieces are told
   */
  public HandViewModel(Words words, WorkViewModel work, Speech speech) {
    this.words = words;
    this.work = work;
    this.speech = speech;
  }

  /** How figures and pieces are told to people. */
  public interface Speech {

    /** The unit that lengths are told in. */
    LengthUnit unit();

    /** What a piece is called on the picture; what is no piece is called as it is. */
    String nameOf(String pieceId);
  }

  /** What is in the hand. */
  public ReadOnlyObjectProperty<Optional<Held>> held() {
    return held.getReadOnlyProperty();
  }

  /** What there is to say, for a line under the picture and for screen readers. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** Says something about work by hand. */
  public void tell(String sentence) {
    told.set(sentence);
  }

  /** Whether the piece goes where the mouse goes, and not by keys alone. */
  public boolean followsPointer() {
    return follows;
  }

  /** From now on the piece in the hand goes where the mouse goes, or by keys alone. */
  public void followPointer(boolean so) {
    follows = so;
  }

  /** Takes up a piece that stands; false, with the reason told, when it cannot be. */
  public boolean takeUp(String pieceId) {
    putBack();
    Optional<WorkPlan> plan = work.plan().get();
    Optional<Placement> place = plan.flatMap(one -> one.placement(pieceId));
    if (place.isEmpty()) {
      return false;
    }
    String layer = plan.get().layerOf(pieceId).map(Layer::id).orElseThrow();
    if (plan.get().isLocked(layer)) {
      tell(words.of("hand.locked", layer));
      return false;
    }
    hand = Hand.of(plan.get(), pieceId);
    hand.ifPresent(one -> hold(one.at(layer, place.get().at(), place.get().turn())));
    return hand.isPresent();
  }

  /**
   * Takes a piece that waits into the hand over a layer, at the free place nearest to a point, or
   * over that point when no place is free.
   */
  public boolean takeIn(String pieceId, String layerId, Point near) {
    putBack();
    Optional<WorkPlan> plan = work.plan().get();
    if (plan.flatMap(one -> one.waiting(pieceId)).isEmpty()) {
      return false;
    }
    if (plan.get().isLocked(layerId)) {
      tell(words.of("hand.locked", layerId));
      return false;
    }
    hand = Hand.of(plan.get(), pieceId);
    hand.ifPresent(one -> holdFree(one, layerId, near, Angle.ZERO));
    return hand.isPresent();
  }

  private void holdFree(Hand one, String layerId, Point near, Angle turn) {
    Optional<Tentative> free = one.free(layerId, near, turn);
    hold(free.orElseGet(() -> one.at(layerId, near, turn)));
    if (free.isEmpty()) {
      tell(words.of("hand.noFreePlace", layerId, told.get()));
    }
  }

  /** Carries the piece to a place, drawn to rest against others within a reach. */
  public void carry(Point to, Length reach) {
    with(
        (one, at) ->
            hold(
                reach.isPositive()
                    ? one.snapped(at.layerId(), to, at.place().turn(), reach)
                    : one.at(at.layerId(), to, at.place().turn())));
  }

  /** Carries the piece by so much. */
  public void nudge(Length right, Length away) {
    with(
        (one, at) -> {
          follows = false;
          Point from = at.place().at();
          Point to = new Point(from.x().plus(right), from.y().plus(away));
          hold(one.at(at.layerId(), to, at.place().turn()));
        });
  }

  /** Turns the piece anticlockwise. */
  public void turn(double degrees) {
    with(
        (one, at) -> {
          int turned = at.place().turn().millidegrees() + (int) Math.round(degrees * 1000);
          hold(one.at(at.layerId(), at.place().at(), new Angle(turned)));
          if (!one.mayTurn()) {
            tell(words.of("hand.round", told.get()));
          }
        });
  }

  /** Carries the piece over another layer, to the free place nearest to where it is held. */
  public void toLayer(String layerId) {
    with(
        (one, at) -> {
          if (work.plan().get().filter(plan -> plan.isLocked(layerId)).isPresent()) {
            tell(words.of("hand.locked", layerId));
          } else if (!layerId.equals(at.layerId())) {
            holdFree(one, layerId, at.place().at(), at.place().turn());
          }
        });
  }

  /** Sets the piece down where it is held; false when nothing was in the hand. */
  public boolean setDown() {
    Optional<Held> last = held.get();
    last.ifPresent(
        one -> {
          hand = Optional.empty();
          follows = false;
          edit(one.tentative()).ifPresent(work::apply);
          tell(words.of(one.isForbidden() ? "hand.downForbidden" : "hand.down", one.told()));
          held.set(Optional.empty());
        });
    return last.isPresent();
  }

  /** Lets go of the piece, which stays where it was. */
  public void putBack() {
    hand = Optional.empty();
    follows = false;
    if (held.get().isPresent()) {
      held.set(Optional.empty());
      tell("");
    }
  }

  /** The step that setting down is; empty when the piece is where it was. */
  private Optional<Edit> edit(Tentative at) {
    WorkPlan plan = work.plan().get().orElseThrow();
    Placement place = at.place();
    Optional<Placement> was = plan.placement(place.pieceId());
    if (was.isEmpty()) {
      return Optional.of(new Edit.PutIn(at.layerId(), place));
    }
    if (!plan.layerOf(place.pieceId()).map(Layer::id).equals(Optional.of(at.layerId()))) {
      return Optional.of(new Edit.SendToLayer(at.layerId(), place));
    }
    if (!was.get().at().equals(place.at())) {
      return Optional.of(new Edit.MovePiece(place.pieceId(), place.at(), place.turn()));
    }
    return was.get().turn().equals(place.turn())
        ? Optional.empty()
        : Optional.of(new Edit.TurnPiece(place.pieceId(), place.turn()));
  }

  private void hold(Tentative at) {
    FigureWords figures = new FigureWords(words, speech);
    Held now = new Held(at, figures.told(at), figures.label(at));
    tell(now.told());
    held.set(Optional.of(now));
  }

  private void with(Step step) {
    if (hand.isPresent() && held.get().isPresent()) {
      step.go(hand.get(), held.get().get().tentative());
    }
  }

  private interface Step {
    void go(Hand hand, Tentative at);
  }
}
