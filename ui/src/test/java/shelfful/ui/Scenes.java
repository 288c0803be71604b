package shelfful.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;

/** A window on the screen in memory, to look into. */
public final class Scenes implements AutoCloseable {
  private static final Path PICTURES = Path.of("target", "pictures");

  private final Parent content;
  private final Stage stage;

  private Scenes(Parent content, Stage stage) {
    this.content = content;
    this.stage = stage;
  }

  /** Opens a window on content made on the screen's thread. */
  public static Scenes open(
      Supplier<? extends Parent> content, Settings settings, double width, double height) {
    Scenes scenes =
        Screen.on(
            () -> {
              Parent made = content.get();
              Look.dress(made, settings);
              Stage stage = new Stage();
              stage.setScene(new Scene(made, width, height));
              stage.show();
              return new Scenes(made, stage);
            });
    scenes.settle();
    return scenes;
  }

  /** Does something on the screen's thread and lets the window lay itself out. */
  public void run(Runnable step) {
    Screen.on(
        () -> {
          step.run();
          return null;
        });
    settle();
  }

  private void settle() {
    for (int i = 0; i < 3; i++) {
      Screen.on(
          () -> {
            content.applyCss();
            content.layout();
            return null;
          });
    }
  }

  /** Everything of a kind in the window, in its order. */
  public <N extends Node> List<N> all(Class<N> type) {
    return all(content, type);
  }

  /** Everything of a kind in a part of a window, in its order. */
  public static <N extends Node> List<N> all(Node under, Class<N> type) {
    List<N> found = new ArrayList<>();
    if (type.isInstance(under)) {
      found.add(type.cast(under));
    }
    if (under instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> found.addAll(all(child, type)));
    }
    return found;
  }

  /** The control of this id. */
  public <N extends Node> N called(String id, Class<N> type) {
    return all(type).stream().filter(node -> id.equals(node.getId())).findFirst().orElseThrow();
  }

  /** Words that do not have the room they need. */
  public List<String> cutShort() {
    return Screen.on(
        () ->
            all(Labeled.class).stream()
                .filter(Scenes::isShown)
                .filter(Scenes::isCut)
                .map(label -> label.getClass().getSimpleName() + " " + label.getText())
                .toList());
  }

  private static boolean isShown(Node node) {
    for (Node one = node; one != null; one = one.getParent()) {
      if (!one.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isCut(Labeled label) {
    if (label.getText() == null || label.getText().isEmpty() || label.getWidth() <= 0) {
      return false;
    }
    return label.isWrapText()
        ? label.prefHeight(label.getWidth()) > label.getHeight() + 1
        : label.prefWidth(-1) > label.getWidth() + 1;
  }

  /**
   * What takes the focus and has no name that could be read aloud, or no role. What is disabled,
   * such as the desk under the start, takes none.
   */
  public List<String> silent() {
    return all(Node.class).stream()
        .filter(Node::isFocusTraversable)
        .filter(node -> !node.isDisabled())
        .filter(node -> said(node).isBlank() || node.getAccessibleRole() == null)
        .map(Node::toString)
        .toList();
  }

  private static String said(Node node) {
    String spoken = node.getAccessibleText() == null ? "" : node.getAccessibleText();
    boolean hasOwnText = node instanceof Labeled && !(node instanceof TextInputControl);
    return hasOwnText && spoken.isEmpty() ? String.valueOf(((Labeled) node).getText()) : spoken;
  }

  /** Keeps what the window looks like as {@code target/pictures/NAME.png}. */
  public void picture(String name) {
    WritableImage image = Screen.on(() -> content.getScene().snapshot(null));
    BufferedImage copy =
        new BufferedImage(
            (int) image.getWidth(), (int) image.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < copy.getHeight(); y++) {
      for (int x = 0; x < copy.getWidth(); x++) {
        copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    try {
      Files.createDirectories(PICTURES);
      ImageIO.write(copy, "png", PICTURES.resolve(name + ".png").toFile());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  @Override
  public void close() {
    Screen.on(
        () -> {
          stage.close();
          return null;
        });
  }
}
