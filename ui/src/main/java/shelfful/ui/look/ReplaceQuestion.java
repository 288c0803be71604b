package shelfful.ui.look;

import java.nio.file.Path;
import java.util.function.Predicate;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.Window;
import shelfful.ui.words.Words;

/**
 * The question before a file is replaced. Escape and closing the question keep the file.
 *
 * @param window over which it is asked
 */
public record ReplaceQuestion(Words words, Window window) implements Predicate<Path> {
  @Override
  public boolean test(Path file) {
    ButtonType replace = new ButtonType(words.of("replace.yes"), ButtonBar.ButtonData.YES);
    ButtonType keep = new ButtonType(words.of("replace.no"), ButtonBar.ButtonData.CANCEL_CLOSE);
    Alert alert =
        new Alert(Alert.AlertType.NONE, words.of("replace.ask", file.getFileName()), replace, keep);
    alert.initOwner(window);
    alert.setTitle(words.of("window.title"));
    Look.dressLike(alert.getDialogPane(), window.getScene().getRoot());
    return alert.showAndWait().filter(answer -> answer == replace).isPresent();
  }
}
