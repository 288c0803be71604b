package shelfful.ui.desk;

import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.Window;
import shelfful.ui.look.Look;
import shelfful.ui.words.Words;

/**
 * The question before unsaved work is left behind. Enter saves, Escape goes back, Tab goes from
 * answer to answer.
 */
final class LeaveQuestion {
  private final ButtonType save;
  private final ButtonType leave;
  private final Alert alert;

  /** Not asked yet. */
  LeaveQuestion(Words words, Window window, String sentence) {
    save = new ButtonType(words.of("leave.save"), ButtonBar.ButtonData.YES);
    leave = new ButtonType(words.of("leave.leave"), ButtonBar.ButtonData.NO);
    ButtonType stay = new ButtonType(words.of("leave.stay"), ButtonBar.ButtonData.CANCEL_CLOSE);
    alert = new Alert(Alert.AlertType.NONE, sentence, save, leave, stay);
    alert.initOwner(window);
    alert.setTitle(words.of("window.title"));
    Look.dressLike(alert.getDialogPane(), window.getScene().getRoot());
  }

  /** Waits for the answer; a window that is closed goes back. */
  Places.Answer answer() {
    return alert.showAndWait().map(this::meant).orElse(Places.Answer.STAY);
  }

  private Places.Answer meant(ButtonType chosen) {
    if (chosen == save) {
      return Places.Answer.SAVE;
    }
    return chosen == leave ? Places.Answer.LEAVE : Places.Answer.STAY;
  }
}
