package shelfful.ui.shelfview;

import shelfful.drawing.Spot;

/**
 * Who is told what the mouse does on the paper. Spots are on the first sheet, in millimetres.
 *
 * @see ShelfView#onPointer
 */
public interface Pointer {

  /** A button goes down; true to take the drag that may follow, false to let the paper move. */
  boolean press(Spot at);

  /** The mouse is dragged after a press that was taken; {@code free} while Shift is held. */
  void drag(Spot at, boolean free);

  /** The button goes up after such a drag. */
  void drop();

  /** A button went down and up in one place, for the first or the second time. */
  void click(Spot at, int times);

  /** The mouse moves with no button down. */
  void move(Spot at, boolean free);

  /** Does nothing. */
  static Pointer none() {
    return new Pointer() {
      @Override
      public boolean press(Spot at) {
        return false;
      }

      @Override
      public void drag(Spot at, boolean free) {}

      @Override
      public void drop() {}

      @Override
      public void click(Spot at, int times) {}

      @Override
      public void move(Spot at, boolean free) {}
    };
  }
}
