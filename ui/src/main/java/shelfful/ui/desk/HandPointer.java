package shelfful.ui.desk;

import java.util.Optional;
import java.util.function.DoubleSupplier;
import shelfful.drawing.PlanView;
import shelfful.drawing.Spot;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ui.hand.Held;
import shelfful.ui.shelfview.Pointer;

/**
 * The mouse on a layer: dragging a piece carries it, a click chooses, a second click takes the
 * chosen piece up, and the next click sets it down.
 */
final class HandPointer implements Pointer {
  /** How far a piece is drawn to rest, in pixels. */
  private static final double REACH = 6;

  private final DeskViewModel desk;
  private final DoubleSupplier scale;
  private Point grip = Point.ORIGIN;
  private Spot start;
  private String pressed = "";
  private String gripped = "";

  /**
   * A pointer.
   *
   * @param scale pixels for a millimetre of paper
   */
  HandPointer(DeskViewModel desk, DoubleSupplier scale) {
    this.desk = desk;
    this.scale = scale;
  }

  private Optional<PlanView> view() {
    return desk.shown().get().flatMap(load -> load.view(desk.layerId().get()));
  }

  private Optional<String> pieceAt(Spot at) {
    return desk.shown().get().flatMap(load -> load.pieceAt(desk.layerId().get(), at));
  }

  private boolean isCarrying() {
    return desk.hand().held().get().isPresent();
  }

  @Override
  public boolean press(Spot at) {
    start = at;
    pressed = isCarrying() ? "" : pieceAt(at).orElse("");
    if (!pressed.isEmpty()) {
      // Chosen before it is carried, so that the lists are in step by then.
      desk.choosePiece(pressed);
    }
    return !pressed.isEmpty();
  }

  @Override
  public void drag(Spot at, boolean free) {
    if (!pressed.isEmpty() && !isCarrying()) {
      takeUp(pressed, start);
    }
    carry(at, free);
  }

  private void takeUp(String pieceId, Spot at) {
    desk.settle();
    desk.choosePiece(pieceId);
    pressed = "";
    gripped = pieceId;
    if (desk.hand().takeUp(pieceId)) {
      desk.hand().followPointer(true);
      Point axis = desk.hand().held().get().orElseThrow().tentative().place().at();
      Point under = view().orElseThrow().placeAt(at);
      grip = new Point(axis.x().minus(under.x()), axis.y().minus(under.y()));
    }
  }

  private void carry(Spot at, boolean free) {
    Optional<Held> held = desk.hand().held().get();
    if (held.isPresent() && view().isPresent()) {
      // What was taken up otherwise is held by its middle.
      if (!held.get().pieceId().equals(gripped)) {
        grip = Point.ORIGIN;
        gripped = held.get().pieceId();
      }
      Point under = view().get().placeAt(at);
      Point to = new Point(under.x().plus(grip.x()), under.y().plus(grip.y()));
      double reach = REACH / scale.getAsDouble() * view().get().ratio();
      desk.hand().carry(to, free ? Length.ZERO : Length.ofMillimetres(reach));
    }
  }

  @Override
  public void drop() {
    setDown();
  }

  private void setDown() {
    gripped = "";
    desk.hand().setDown();
  }

  @Override
  public void click(Spot at, int times) {
    if (isCarrying()) {
      setDown();
      return;
    }
    String piece = pieceAt(at).orElse("");
    desk.choosePiece(piece);
    if (times == 2 && !piece.isEmpty()) {
      takeUp(piece, at);
    }
  }

  @Override
  public void move(Spot at, boolean free) {
    if (desk.hand().followsPointer()) {
      carry(at, free);
    }
  }
}
