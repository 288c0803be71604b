package shelfful.ui.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.animation.AnimationTimer;
import shelfful.drawing.LayerList;
import shelfful.drawing.LoadLists;
import shelfful.ui.words.Words;

/**
 * Fills the lists again and again while the start lies over them, a layer at each frame, carries
 * pieces about, and paints it all where nobody sees it. Java compiles what it has seen often:
 * without this the styles, sizes and letters of the first real rows, and the first piece in the
 * hand, hold the screen up for many frames.
 */
final class DeskRehearsal extends AnimationTimer {
  private static final int FRAMES = 40;

  /** Painting takes longer than filling. */
  private static final int PAINTED = 10;

  private final Words words;
  private final ShownLoad load;
  private final DeskViewModel model;
  private final DeskPanes desk;
  private final UnseenHand hand;
  private int frame;

  /** Begins when it is started, a frame later; ends before anything is shown. */
  DeskRehearsal(Words words, DeskViewModel model, ShownLoad load, DeskPanes desk) {
    this.words = words;
    this.model = model;
    this.load = load;
    this.desk = desk;
    this.hand = new UnseenHand(load);
  }

  @Override
  public void handle(long now) {
    if (model.shown().get().isPresent()) {
      stop();
    } else if (frame == FRAMES) {
      stop();
      desk.rehearse();
    } else {
      fill();
      hand.step(frame);
      frame++;
      if (frame % PAINTED == 0) {
        desk.paintUnseen();
      } else if (frame % 2 == 0) {
        hand.paint();
      }
    }
  }

  /** With other rows than at the frame before. */
  private void fill() {
    List<LayerList> layers = load.lists().layers();
    LayerList layer = layers.get(frame % layers.size());
    List<LoadLists.Waiting> waiting = new ArrayList<>(load.lists().waiting());
    if (frame % 2 == 0) {
      Collections.reverse(waiting);
    }
    desk.fill(layer, new PieceRows(words, load).of(layer), waiting);
  }
}
