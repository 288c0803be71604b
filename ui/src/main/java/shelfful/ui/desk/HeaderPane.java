package shelfful.ui.desk;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What is fired, how planning goes, and messages under it. */
final class HeaderPane extends VBox {
  private final Words words;
  private final DeskViewModel model;
  private final Label firing = new Label();
  private final VBox messages = new VBox();

  HeaderPane(Words words, DeskViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("header");
    firing.getStyleClass().add("heading");
    Label state = Lines.of("");
    state.textProperty().bind(model.state());
    Button stop = new Button(words.of("state.stop"));
    stop.setAccessibleText(words.of("state.stopText"));
    stop.getStyleClass().add("main-button");
    stop.visibleProperty().bind(model.planning());
    stop.managedProperty().bind(model.planning());
    stop.setMinWidth(USE_PREF_SIZE);
    stop.setOnAction(event -> model.stop());
    VBox titles = new VBox(firing, state);
    titles.setMinWidth(0);
    HBox.setHgrow(titles, Priority.ALWAYS);
    HBox line = new HBox(titles, stop);
    line.getStyleClass().add("bar");
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(line, messages);
    model.messages().notice().addListener((property, was, is) -> show(is));
    model.shown().addListener((property, was, is) -> is.ifPresent(this::show));
    firing.setText(words.of("window.title"));
  }

  private void show(ShownLoad load) {
    firing.setText(load.lists().firing());
  }

  private void show(Optional<Notice> notice) {
    messages.getChildren().setAll(notice.map(this::message).stream().toList());
  }

  private HBox message(Notice notice) {
    VBox sentences = new VBox();
    sentences.getChildren().add(Lines.of(notice.heading(), "strong"));
    notice.sentences().stream().limit(8).forEach(one -> sentences.getChildren().add(Lines.of(one)));
    if (notice.sentences().size() > 8) {
      sentences.getChildren().add(Lines.of(words.of("notice.more", notice.sentences().size() - 8)));
    }
    HBox.setHgrow(sentences, Priority.ALWAYS);
    Button close = new Button(words.of("notice.close"));
    close.setAccessibleText(words.of("notice.closeText"));
    close.setMinWidth(USE_PREF_SIZE);
    close.setOnAction(event -> model.closeNotice());
    HBox message = new HBox(sentences);
    for (Notice.Choice choice : notice.choices()) {
      Button answer = new Button(choice.words());
      answer.setMinWidth(USE_PREF_SIZE);
      answer.setOnAction(
          event -> {
            model.closeNotice();
            choice.action().run();
          });
      message.getChildren().add(answer);
    }
    message.getChildren().add(close);
    message.getStyleClass().add("notice");
    return message;
  }
}
