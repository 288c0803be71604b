package shelfful.ui.learned;

import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import shelfful.studio.Studio;

/** The studio that suggestions are accepted into. */
public interface StudioDoor {

  /** The studio as it stands, and as it changes by whatever hand. */
  ObservableValue<Studio> studio();

  /**
   * Changes it as one step that can be taken back.
   *
   * @param name of the step
   * @return why it was not changed; empty when it was
   */
  Optional<String> change(String name, UnaryOperator<Studio> change);
}
