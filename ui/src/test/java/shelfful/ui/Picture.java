package shelfful.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** A picture of a window, saved as PNG. */
public final class Picture {
  private Picture() {}

  /** Paints a window and saves it. */
  public static void save(Scene scene, Path file) {
    WritableImage seen = Screen.on(() -> scene.snapshot(null));
    int width = (int) seen.getWidth();
    int height = (int) seen.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, seen.getPixelReader().getArgb(x, y));
      }
    }
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(image, "png", file.toFile());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
