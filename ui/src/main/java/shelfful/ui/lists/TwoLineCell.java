package shelfful.ui.lists;

import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.layout.VBox;

/** A cell with a line and, where there is more to say, a quieter one under it. */
final class TwoLineCell<S> extends TableCell<S, S> {
  private final Function<S, String> first;
  private final Function<S, String> second;
  private final Label upper = new Label();
  private final Label lower = new Label();
  private final VBox both = new VBox(upper, lower);

  TwoLineCell(Function<S, String> first, Function<S, String> second) {
    this.first = first;
    this.second = second;
    lower.getStyleClass().add("quiet");
    lower.managedProperty().bind(lower.visibleProperty());
    both.setAlignment(Pos.CENTER_LEFT);
    setText(null);
  }

  @Override
  protected void updateItem(S row, boolean empty) {
    super.updateItem(row, empty);
    boolean blank = empty || row == null;
    setGraphic(blank ? null : both);
    if (!blank) {
      upper.setText(first.apply(row));
      lower.setText(second.apply(row));
      // Taking it out and in again would have its styles looked up anew for every row.
      lower.setVisible(!lower.getText().isEmpty());
    }
  }
}
