package shelfful.ui.desk;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import shelfful.measure.LengthUnit;
import shelfful.ui.hand.HandViewModel;

/** Figures in the unit of the plan on the screen, pieces by their numbers on it. */
record DeskSpeech(ObservableValue<Optional<ShownLoad>> shown) implements HandViewModel.Speech {

  @Override
  public LengthUnit unit() {
    return shown.getValue().map(ShownLoad::unit).orElse(LengthUnit.MILLIMETRES);
  }

  @Override
  public String nameOf(String pieceId) {
    return shown.getValue().flatMap(load -> load.nameOf(pieceId)).orElse(pieceId);
  }
}
