package shelfful.ui.look;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.scene.control.Labeled;

/** Sizes that grow with the letters, for what a stylesheet cannot size. */
public final class Em {
  private Em() {}

  /**
   * A size in pixels that follows a label's letters.
   *
   * @param at100 the size at 100 %
   */
  public static DoubleBinding of(Labeled label, double at100) {
    return Bindings.createDoubleBinding(
        () -> at100 * label.getFont().getSize() / Look.LETTERS, label.fontProperty());
  }
}
