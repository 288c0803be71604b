package shelfful.ui;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/**
 * A picture of a window, saved as PNG with the 256 colours that occur most, so that it is small.
 */
public final class Picture {
  private static final int COLOURS = 256;

  /** Shades of a channel that are taken for one. */
  private static final int ROUNDED = 0xf8f8f8;

  private Picture() {}

  /** Paints a window and saves it. */
  public static void save(Scene scene, Path file) {
    WritableImage seen = Screen.on(() -> scene.snapshot(null));
    int width = (int) seen.getWidth();
    int height = (int) seen.getHeight();
    int[] pixels = new int[width * height];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = seen.getPixelReader().getArgb(i % width, i / width) & ROUNDED;
    }
    List<Integer> palette = palette(pixels);
    BufferedImage image =
        new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model(palette));
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int i = 0; i < pixels.length; i++) {
      int entry = nearest.computeIfAbsent(pixels[i], colour -> nearest(colour, palette));
      image.getRaster().setSample(i % width, i / width, 0, entry);
    }
    write(image, file);
  }

  private static List<Integer> palette(int[] pixels) {
    Map<Integer, Integer> counted = new HashMap<>();
    for (int pixel : pixels) {
      counted.merge(pixel, 1, Integer::sum);
    }
    return counted.entrySet().stream()
        .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
        .limit(COLOURS)
        .map(Map.Entry::getKey)
        .toList();
  }

  private static IndexColorModel model(List<Integer> palette) {
    byte[] red = new byte[palette.size()];
    byte[] green = new byte[palette.size()];
    byte[] blue = new byte[palette.size()];
    for (int i = 0; i < palette.size(); i++) {
      // The shades that were taken for one are set so that white stays white.
      red[i] = shade(palette.get(i) >> 16);
      green[i] = shade(palette.get(i) >> 8);
      blue[i] = shade(palette.get(i));
    }
    return new IndexColorModel(8, palette.size(), red, green, blue);
  }

  private static byte shade(int channel) {
    int upper = channel & 0xf8;
    return (byte) (upper | upper >> 5);
  }

  private static int nearest(int colour, List<Integer> palette) {
    int best = 0;
    for (int i = 1; i < palette.size(); i++) {
      if (distance(colour, palette.get(i)) < distance(colour, palette.get(best))) {
        best = i;
      }
    }
    return best;
  }

  private static int distance(int one, int other) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int apart = (one >> shift & 0xff) - (other >> shift & 0xff);
      sum += apart * apart;
    }
    return sum;
  }

  private static void write(BufferedImage image, Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(image, "png", file.toFile());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
