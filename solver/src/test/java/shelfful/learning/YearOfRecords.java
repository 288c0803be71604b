package shelfful.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import shelfful.record.FiredPiece;
import shelfful.record.Grade;
import shelfful.record.Ring;
import shelfful.ware.Zone;

/**
 * A year of made-up unpackings from a seed: a hundred firings of ninety pieces each, of four glazes
 * and three forms spread evenly over the kiln. Every firing is a little luckier or unluckier than
 * the others; besides, one place may spoil more than the rest.
 */
final class YearOfRecords {
  static final int FIRINGS = 100;
  static final int PIECES = 90;
  static final double USUAL = 0.06;
  static final double HOT = 0.14;

  private YearOfRecords() {}

  /** Nothing planted: every place and glaze is like the others. */
  static List<Sighting> even(long seed) {
    return year(seed, USUAL);
  }

  /** The edge of the top spoils more than twice as much. */
  static List<Sighting> withHotZone(long seed) {
    return year(seed, HOT);
  }

  private static List<Sighting> year(long seed, double atTopEdge) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<Sighting> year = new ArrayList<>();
    for (int firing = 0; firing < FIRINGS; firing++) {
      double luck = 0.7 + 0.6 * chance.nextDouble();
      for (int piece = 0; piece < PIECES; piece++) {
        Zone zone = Zone.values()[chance.nextInt(3)];
        Ring ring = Ring.values()[chance.nextInt(3)];
        boolean hot = zone == Zone.TOP && ring == Ring.EDGE;
        double rate = luck * (hot ? atTopEdge : USUAL);
        Grade grade = chance.nextDouble() < rate ? Grade.SECOND : Grade.GOOD;
        year.add(
            new Sighting(
                "F" + firing,
                "kiln",
                new FiredPiece(
                    "P" + piece,
                    "form-" + chance.nextInt(3),
                    Optional.of("glaze-" + chance.nextInt(4)),
                    "L1",
                    zone,
                    ring),
                grade));
      }
    }
    return year;
  }
}
