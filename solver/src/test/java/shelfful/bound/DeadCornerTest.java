package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Disc;
import shelfful.measure.Point;

/** No disc that keeps clear of a post and its rims reaches into what the post is said to spoil. */
class DeadCornerTest {
  private static final double SIDE = 400;
  private static final double POST = 26;
  private static final int TRIES = 200_000;

  private static Section disc(double radius) {
    return Section.of(0, Disc.of(radius), 0, radius, radius);
  }

  @Test
  void discsKeepOutOfTheCornerBehindAPost() {
    for (double from : List.of(40.0, 48.0, 60.0)) {
      List<DeadCorner.Near> rims =
          List.of(new DeadCorner.Near(1, 0, from), new DeadCorner.Near(0, 1, from));
      check(from, from, rims, 40);
    }
  }

  @Test
  void discsKeepOutOfTheStripBehindAPost() {
    check(50, 200, List.of(new DeadCorner.Near(1, 0, 50)), 34);
  }

  @Test
  void nothingIsSpoiltWhereDiscsPassBetweenPostAndRim() {
    Point post = Point.ofMillimetres(SIDE - 150, SIDE - 200);
    List<DeadCorner.Near> rims = List.of(new DeadCorner.Near(1, 0, 150));
    assertThat(DeadCorner.of(post, POST, List.of(disc(40)), rims)).isNull();
  }

  private static void check(
      double fromRight, double fromTop, List<DeadCorner.Near> rims, double least) {
    double x = SIDE - fromRight;
    double y = SIDE - fromTop;
    List<Section> sections = List.of(disc(least), disc(2 * least));
    DeadCorner dead = DeadCorner.of(Point.ofMillimetres(x, y), POST, sections, rims);
    assertThat(dead).isNotNull();
    Random random = new Random(3);
    int tried = 0;
    for (int i = 0; i < TRIES; i++) {
      double radius = random.nextBoolean() ? least : 2 * least;
      double cx = SIDE / 2 + (SIDE / 2 - radius) * random.nextDouble();
      double cy = SIDE / 2 + (SIDE / 2 - radius) * random.nextDouble();
      if (Math.hypot(cx - x, cy - y) >= radius + POST) {
        tried++;
        double beyondX = Math.max(0, Math.max(x - cx, cx - x - dead.across()));
        double beyondY = Math.max(0, Math.max(y - cy, cy - y - dead.along()));
        assertThat(Math.hypot(beyondX, beyondY)).isGreaterThanOrEqualTo(radius + dead.half());
      }
    }
    assertThat(tried).isGreaterThan(1000);
  }
}
