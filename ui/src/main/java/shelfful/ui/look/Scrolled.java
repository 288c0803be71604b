package shelfful.ui.look;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Content that fills its place and scrolls where the place is too small for it. */
public final class Scrolled {
  private Scrolled() {}

  /** A pane that takes no focus itself. */
  public static ScrollPane of(Node content) {
    ScrollPane pane = new ScrollPane(content);
    pane.setFitToWidth(true);
    pane.setFitToHeight(true);
    pane.setFocusTraversable(false);
    return pane;
  }
}
