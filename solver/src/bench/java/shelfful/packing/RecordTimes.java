package shelfful.packing;

import java.util.List;
import java.util.Locale;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/**
 * Prints how long the packer takes to reach published records, three times over so that the last
 * round is warm. A plain program: {@code java shelfful.packing.RecordTimes}.
 */
public final class RecordTimes {
  /** Container over circle radius, equal circles in a circle, n = 13 to 37: record tables. */
  private static final double[] RATIOS = {
    4.2360679775, 4.3284285549, 4.5213569647, 4.6154255949, 4.7920337483, 4.8637033052,
    4.8637033052, 5.1223207370, 5.2523174750, 5.4397189591, 5.5452042226, 5.6516610918,
    5.7528243309, 5.8281765369, 5.9063978474, 6.0149380974, 6.1385979040, 6.1977410709,
    6.2915026221, 6.4294629710, 6.4867031236, 6.6109570900, 6.6971710918, 6.7467537934,
    6.7587704831
  };

  private RecordTimes() {}

  /** Runs all. */
  public static void main(String[] arguments) {
    System.out.printf(
        Locale.ROOT,
        "Java %s, %s, seed 1, effort %s%n",
        System.getProperty("java.version"),
        System.getProperty("os.arch"),
        Effort.THOROUGH);
    for (int round = 0; round < 3; round++) {
      long begin = System.nanoTime();
      int fitted = 0;
      for (int i = 0; i < RATIOS.length; i++) {
        BodyKind circle = BodyKind.round("circle", 100, 10);
        fitted += fits(Region.disc(100.01 * RATIOS[i]), circle, 13 + i) ? 1 : 0;
      }
      report("equal circles 13 to 37 at record x 1.0001", fitted, begin);
      begin = System.nanoTime();
      BodyKind oval = BodyKind.upright("oval", Oval.of(100, 50), 10);
      boolean dense = fits(Region.disc(Math.sqrt(24 * 5000 / 0.855)), oval, 24);
      report("24 ovals of 2:1 at 85.5 %", dense ? 1 : 0, begin);
    }
  }

  private static boolean fits(Region region, BodyKind kind, int count) {
    ShelfSpace space = ShelfSpace.of(new Room(region, 0, Applies.BODY));
    ShelfQuestion question = ShelfQuestion.of(space, List.of(kind), new int[] {count}, 0);
    return new ShelfPacker().pack(question, Effort.THOROUGH, 1) instanceof Packed;
  }

  private static void report(String what, int fitted, long begin) {
    System.out.printf(
        Locale.ROOT, "%s: %d fitted, %.0f ms%n", what, fitted, (System.nanoTime() - begin) / 1e6);
  }
}
