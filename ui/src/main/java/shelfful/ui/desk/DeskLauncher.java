package shelfful.ui.desk;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.logging.LogManager;
import javafx.application.Application;

/**
 * Starts the desk. Apart from the application class, because a main class that is an application
 * itself cannot be started from the class path.
 */
public final class DeskLauncher {
  private static final String SOFTWARE_RENDERING = "--software-rendering";

  private DeskLauncher() {}

  /**
   * Opens the window.
   *
   * @param args {@code --software-rendering} to draw without the graphics card, and at most one
   *     plan file to open
   */
  public static void main(String[] args) {
    readLoggingConfiguration();
    if (List.of(args).contains(SOFTWARE_RENDERING)) {
      System.setProperty("prism.order", "sw");
    }
    String[] rest =
        List.of(args).stream()
            .filter(arg -> !arg.equals(SOFTWARE_RENDERING))
            .toArray(String[]::new);
    Application.launch(Desk.class, rest);
  }

  private static void readLoggingConfiguration() {
    try (InputStream settings = DeskLauncher.class.getResourceAsStream("logging.properties")) {
      LogManager.getLogManager().readConfiguration(settings);
    } catch (IOException unreadable) {
      throw new IllegalStateException("the desk's own logging settings are missing", unreadable);
    }
  }
}
