package shelfful.ui.desk;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Em;
import shelfful.ui.words.Words;

/**
 * The buttons of work by hand under the picture, and the line that says what the hand measures.
 * Where there is little room the buttons stand in one row, with those that find none in a menu at
 * its end.
 */
final class HandBar extends VBox {
  /** Two lines of what is told, so that nothing jumps when it needs the second. */
  private static final double TOLD = 36;

  private final Words words;
  private final Label told = new Label();
  private final FlowPane rows = new FlowPane();
  private final ToolBar row = new ToolBar();
  private final List<Button> buttons;

  HandBar(Words words, DeskViewModel model, DeskCommands commands) {
    this.words = words;
    getStyleClass().add("hand-bar");
    rows.getStyleClass().add("hand-buttons");
    row.getStyleClass().add("hand-row");
    Button take = button("hand.take", commands::takeUpOrSetDown);
    model
        .hand()
        .held()
        .addListener(
            (property, was, is) ->
                take.setText(words.of(is.isPresent() ? "hand.setDown" : "hand.take")));
    buttons =
        List.of(
            take,
            button("hand.turnLeft", () -> commands.turn(HandKeys.TURN)),
            button("hand.turnRight", () -> commands.turn(-HandKeys.TURN)),
            button("hand.layerUp", () -> commands.toLayerAfter(1)),
            button("hand.layerDown", () -> commands.toLayerAfter(-1)),
            button("hand.takeOut", commands::takeOut),
            button("hand.putIn", commands::putIn),
            button("hand.pin", commands::pin),
            button("hand.lock", commands::lock),
            button("hand.undo", commands::undo),
            button("hand.redo", commands::redo));
    told.textProperty().bind(model.hand().told());
    told.getStyleClass().add("hand-told");
    told.setWrapText(true);
    told.setMaxWidth(Double.MAX_VALUE);
    keepSmall(false);
  }

  /** Keeps to one row of buttons and one line of what is told, or takes all they need. */
  void keepSmall(boolean small) {
    rows.getChildren().clear();
    row.getItems().clear();
    if (small) {
      row.getItems().setAll(buttons);
    } else {
      rows.getChildren().setAll(buttons);
    }
    told.minHeightProperty().bind(Em.of(told, small ? TOLD / 2 : TOLD));
    getChildren().setAll(told, small ? row : rows);
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(words.of(key));
    button.setAccessibleText(words.of(key + "Text"));
    button.setTooltip(new Tooltip(words.of(key + "Text")));
    button.setMinWidth(USE_PREF_SIZE);
    button.setFocusTraversable(true);
    button.setOnAction(event -> action.run());
    return button;
  }
}
