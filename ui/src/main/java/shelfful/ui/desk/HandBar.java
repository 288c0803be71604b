package shelfful.ui.desk;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Em;
import shelfful.ui.words.Words;

/** The buttons of work by hand under the picture, and the line that says what the hand measures. */
final class HandBar extends VBox {
  /** Two lines of what is told, so that nothing jumps when it needs the second. */
  private static final double TOLD = 36;

  private final Words words;

  HandBar(Words words, DeskViewModel model, DeskCommands commands) {
    this.words = words;
    getStyleClass().add("hand-bar");
    FlowPane buttons = new FlowPane();
    buttons.getStyleClass().add("hand-buttons");
    Button take = button("hand.take", commands::takeUpOrSetDown);
    model
        .hand()
        .held()
        .addListener(
            (property, was, is) ->
                take.setText(words.of(is.isPresent() ? "hand.setDown" : "hand.take")));
    buttons
        .getChildren()
        .addAll(
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
                button("hand.redo", commands::redo)));
    Label told = new Label();
    told.textProperty().bind(model.hand().told());
    told.getStyleClass().add("hand-told");
    told.setWrapText(true);
    told.minHeightProperty().bind(Em.of(told, TOLD));
    told.setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(told, buttons);
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
