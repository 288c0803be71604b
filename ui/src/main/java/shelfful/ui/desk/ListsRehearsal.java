package shelfful.ui.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.animation.AnimationTimer;
import shelfful.drawing.LayerList;
import shelfful.drawing.LoadLists;
import shelfful.ui.words.Words;

/**
 * Fills the lists again and again while the start lies over them, a layer at each frame, and paints
 * them where nobody sees it. Java compiles what it has seen often: without this the styles, sizes
 * and letters of the first real rows hold the screen up for many frames.
 */
final class ListsRehearsal extends AnimationTimer {
  private static final int FRAMES = 40;

  /** Painting takes longer than filling. */
  private static final int PAINTED = 10;

  private final Words words;
  private final ShownLoad load;
  private final DeskViewModel model;
  private final DeskPanes desk;
  private int frame;

  /** Begins when it is started, a frame later; ends before anything is shown. */
  ListsRehearsal(Words words, DeskViewModel model, ShownLoad load, DeskPanes desk) {
    this.words = words;
    this.model = model;
    this.load = load;
    this.desk = desk;
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
      frame++;
      if (frame % PAINTED == 0) {
        desk.paintUnseen();
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
