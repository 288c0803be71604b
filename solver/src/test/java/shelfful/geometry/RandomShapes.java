package shelfful.geometry;

import java.util.SplittableRandom;

/** Seeded shapes and poses for property tests. */
public final class RandomShapes {
  private final SplittableRandom random;

  /** The same seed gives the same shapes. */
  public RandomShapes(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A disc, capsule or oval of 5 to 120 mm, its centre off its body's axis by up to 30 mm. */
  public Shape next() {
    double x = between(-30, 30);
    double y = between(-30, 30);
    return switch (random.nextInt(3)) {
      case 0 -> new Disc(x, y, between(5, 60));
      case 1 -> new Capsule(x, y, between(-60, 60), between(-60, 60), between(3, 30));
      default -> oval(x, y);
    };
  }

  /** An oval, up to ten times as long as wide or the other way about. */
  public Oval oval(double x, double y) {
    return new Oval(x, y, between(6, 60), between(6, 60), between(-4, 4));
  }

  /** A pose within a distance of the origin, at any angle. */
  public Pose pose(double within) {
    return new Pose(between(-within, within), between(-within, within), between(-4, 4));
  }

  /** A number between two. */
  public double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
