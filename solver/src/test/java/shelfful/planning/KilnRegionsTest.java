package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import shelfful.fixture.PlanShapes;
import shelfful.fixture.RandomDice;
import shelfful.fixture.RandomRequest;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Region;
import shelfful.kiln.Column;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/**
 * Regions of the kilns of random requests against JTS: a point is in one when it is in the other.
 */
class KilnRegionsTest {
  /** Points nearer to an edge than this are not asked about: JTS draws discs with corners. */
  private static final double NEAR = 0.05;

  private int asked;

  @Test
  void chambersAndShelvesCoverWhatTheyCover() {
    for (long seed = 0; seed < 80; seed++) {
      Studio studio = RandomRequest.of(seed).studio();
      Kiln kiln = studio.kilns().get(0);
      RandomDice dice = new RandomDice(seed);
      Region chamber = KilnRegions.chamber(kiln.chamber().floorPlan());
      ShelfFrame here = new ShelfFrame(0, 0, 0);
      agree(dice, chamber, here, PlanShapes.chamber(kiln.chamber().floorPlan()));
      for (Column column : kiln.columnPlans().get(0).columns()) {
        for (ShelfPlace place : column.places()) {
          Shelf shelf = studio.shelf(place.shelfIds().get(0)).orElseThrow();
          ShelfFrame frame = ShelfFrame.of(place);
          agree(
              dice,
              KilnRegions.shelf(shelf.outline()),
              frame,
              PlanShapes.shelf(shelf.outline(), place));
          agree(
              dice,
              KilnRegions.in(frame, chamber),
              frame,
              PlanShapes.chamber(kiln.chamber().floorPlan()));
        }
      }
    }
    assertThat(asked).isGreaterThan(5000);
  }

  private void agree(RandomDice dice, Region region, ShelfFrame frame, Geometry truth) {
    for (int i = 0; i < 40; i++) {
      Point at = Point.ofMillimetres(dice.number(-450, 450), dice.number(-350, 350));
      Geometry point = PlanShapes.point(at);
      if (truth.getBoundary().distance(point) > NEAR) {
        double[] seen = frame.toShelf(at.x().millimetres(), at.y().millimetres());
        assertThat(contains(region, seen[0], seen[1]))
            .as(at + " in " + region)
            .isEqualTo(truth.contains(point));
        asked++;
      }
    }
  }

  private static boolean contains(Region region, double x, double y) {
    return region.bounds().stream().allMatch(bound -> contains(bound, x, y));
  }

  private static boolean contains(Bound bound, double x, double y) {
    if (bound instanceof HalfPlane wall) {
      return wall.nx() * x + wall.ny() * y <= wall.offset();
    }
    if (bound instanceof DiscBound disc) {
      return Math.hypot(x - disc.x(), y - disc.y()) <= disc.radius();
    }
    OvalBound oval = (OvalBound) bound;
    double cos = Math.cos(oval.angle());
    double sin = Math.sin(oval.angle());
    double along = (x - oval.x()) * cos + (y - oval.y()) * sin;
    double across = (y - oval.y()) * cos - (x - oval.x()) * sin;
    return Math.hypot(along / oval.halfLength(), across / oval.halfWidth()) <= 1;
  }
}
