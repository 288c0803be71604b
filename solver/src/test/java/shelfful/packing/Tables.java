package shelfful.packing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Published tables of best-known packings, by number of circles. */
public final class Tables {
  private Tables() {}

  /** Container radius over circle radius: the record tables of equal circles in a circle. */
  public static Map<Integer, Double> circlesInCircle() {
    return read("circles_in_circle.csv");
  }

  /** Side over circle radius: equal circles in a square. */
  public static Map<Integer, Double> circlesInSquare() {
    return read("circles_in_square.csv");
  }

  /** Radius of the smallest circle known to hold radii 1 to n (Ye, Huang, Lu 2013). */
  public static Map<Integer, Double> radiiOneTo() {
    return read("radii_one_to_n.csv");
  }

  private static Map<Integer, Double> read(String name) {
    Map<Integer, Double> table = new TreeMap<>();
    try (InputStream in = Tables.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .skip(1)
          .map(line -> line.split(","))
          .forEach(cells -> table.put(Integer.parseInt(cells[0]), Double.parseDouble(cells[1])));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table;
  }
}
