package shelfful.ui.batches;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;

/** A sentence that goes on in the next line where the list is too narrow for it. */
final class SentenceCell extends ListCell<String> {
  private static final double SIDES = 44;

  private final Label sentence = new Label();

  SentenceCell() {
    sentence.setWrapText(true);
    sentence.setMinHeight(USE_PREF_SIZE);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(String text, boolean empty) {
    super.updateItem(text, empty);
    setAccessibleText(text);
    setGraphic(empty ? null : sentence);
    if (!empty) {
      sentence.maxWidthProperty().bind(getListView().widthProperty().subtract(SIDES));
      sentence.setText(text);
    }
  }
}
