package shelfful.ui.firings;

import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.record.Grade;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The buttons that mark the chosen piece, with the list of what can be wrong. */
final class GradeButtons extends VBox {
  private final UnpackingViewModel model;
  private final ComboBox<String> cause = new ComboBox<>();

  GradeButtons(Words words, UnpackingViewModel model) {
    this.model = model;
    getStyleClass().add("list-side");
    cause.setEditable(true);
    cause.getEditor().setAccessibleText(words.of("unpack.causeText"));
    cause.getItems().setAll(model.causes().get());
    model.causes().addListener((property, was, is) -> cause.getItems().setAll(is));
    FlowPane grades = row();
    GradeKeys keys = new GradeKeys(words);
    for (Grade grade : Grade.values()) {
      Button button =
          new Button(words.of("unpack.graded", keys.letter(grade), words.of("grade", grade)));
      button.setMinWidth(USE_PREF_SIZE);
      button.setOnAction(event -> mark(grade));
      button.disableProperty().bind(model.pieceId().isEmpty());
      grades.getChildren().add(button);
    }
    FlowPane rest = row();
    rest.getChildren()
        .addAll(
            FileBar.button(words, "unpack.rest", model::restIsGood),
            FileBar.button(words, "unpack.forget", this::forget));
    getChildren()
        .addAll(
            new Labelled(words.of("unpack.causeText"), cause),
            grades,
            rest,
            Lines.of(words.of("unpack.note"), "quiet"));
  }

  private static FlowPane row() {
    FlowPane row = new FlowPane();
    row.setHgap(8);
    row.setVgap(6);
    return row;
  }

  /** Whether letters typed belong to a cause. */
  boolean isTyping() {
    return cause.getEditor().isFocused() || cause.isFocused();
  }

  void mark(Grade grade) {
    String typed = cause.getEditor().getText();
    model.mark(grade, typed == null ? "" : typed);
    if (grade.isFlawed()) {
      cause.getEditor().clear();
      cause.setValue(null);
    }
  }

  private void forget() {
    String typed = cause.getEditor().getText();
    model.forget(typed == null ? "" : typed.strip());
    cause.getEditor().clear();
  }
}
