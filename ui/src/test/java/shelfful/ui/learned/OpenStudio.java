package shelfful.ui.learned;

import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import shelfful.studio.Studio;
import shelfful.ui.studio.OutsideChange;
import shelfful.ui.studio.StudioViewModel;

/** The door to a studio that is open anyway. */
record OpenStudio(StudioViewModel model) implements StudioDoor {
  @Override
  public ObservableValue<Studio> studio() {
    return model.studio();
  }

  @Override
  public Optional<String> change(String name, UnaryOperator<Studio> change) {
    return new OutsideChange(model).take(name, change);
  }
}
