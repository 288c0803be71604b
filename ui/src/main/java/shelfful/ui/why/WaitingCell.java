package shelfful.ui.why;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Lines;

/** A waiting batch in the list: what it is and how far looking for a remedy has come. */
final class WaitingCell extends ListCell<WaitingRow> {
  private static final double SIDES = 34;

  private final RemedyCards cards;
  private final Label what = Lines.of("", "strong");
  private final Label state = Lines.of("");
  private final VBox both = new VBox(what, state);

  WaitingCell(ListView<WaitingRow> list, RemedyCards cards) {
    this.cards = cards;
    for (Label label : List.of(what, state)) {
      label.maxWidthProperty().bind(list.widthProperty().subtract(SIDES));
    }
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(WaitingRow row, boolean empty) {
    super.updateItem(row, empty);
    setGraphic(empty ? null : both);
    if (!empty) {
      what.setText(cards.what(row));
      state.setText(cards.state(row));
      setAccessibleText(what.getText() + ": " + state.getText());
    }
  }
}
