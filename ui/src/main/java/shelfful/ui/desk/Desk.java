package shelfful.ui.desk;

import java.nio.file.Path;
import java.time.Duration;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.ui.task.FxTaskRunner;
import shelfful.ui.words.Words;

/** The desk as an application: one window. */
public final class Desk extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 820;

  /** Left for the window's own title bar. */
  private static final double TITLE = 40;

  private static final SearchLength LENGTH = SearchLength.ofTime(Duration.ofSeconds(30));

  private DeskViewModel model;

  @Override
  public void start(Stage stage) {
    Words words = Words.english();
    RecoveryFolder recovery = RecoveryFolder.usual();
    model = new DeskViewModel(words, new FxTaskRunner(), LENGTH, recovery);
    DeskWindow window =
        new DeskWindow(words, model, new AskForFile(words, stage, getHostServices()::showDocument));
    stage.setTitle(words.of("window.title"));
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    stage.setScene(
        new Scene(
            window, Math.min(WIDTH, room.getWidth()), Math.min(HEIGHT, room.getHeight() - TITLE)));
    stage.setMinWidth(860);
    stage.setMinHeight(560);
    // The picture is sometimes lost while another window lies over this one.
    stage.focusedProperty().addListener(changed -> window.requestLayout());
    stage.show();
    window.offer(recovery);
    getParameters().getRaw().stream().findFirst().map(Path::of).ifPresent(model::open);
  }

  @Override
  public void stop() {
    model.stop();
  }
}
