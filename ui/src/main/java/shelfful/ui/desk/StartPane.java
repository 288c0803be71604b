package shelfful.ui.desk;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import shelfful.ui.words.Words;

/** What the window holds before there is a load. */
final class StartPane extends VBox {
  private final HBox buttons = new HBox();

  StartPane(Words words, Runnable open, Runnable demo) {
    getStyleClass().add("start");
    Label heading = new Label(words.of("start.heading"));
    heading.getStyleClass().add("title");
    Label text = new Label(words.of("start.text"));
    text.setWrapText(true);
    text.setMaxWidth(460);
    text.setMinHeight(USE_PREF_SIZE);
    Button first = new Button(words.of("start.demo"));
    first.getStyleClass().add("main-button");
    first.setOnAction(event -> demo.run());
    Button second = new Button(words.of("start.open"));
    second.setOnAction(event -> open.run());
    buttons.getChildren().addAll(first, second);
    buttons.getStyleClass().add("buttons");
    getChildren().addAll(heading, text, buttons);
  }

  /** Offers one more way to begin. */
  void offer(String what, Runnable action) {
    Button more = new Button(what);
    more.setOnAction(event -> action.run());
    buttons.getChildren().add(more);
  }
}
