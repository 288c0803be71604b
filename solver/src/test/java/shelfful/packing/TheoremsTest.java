package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/** The packer against theorems and identities. */
class TheoremsTest {
  @Test
  void packsParallelOvalsInASimilarOvalWhereverCirclesFitInACircle() {
    // Exact by an affine map: n ovals (a, b) fit in (ra, rb) as n unit circles fit in radius r.
    Oval outline = Oval.of(50, 30);
    BodyKind oval = new BodyKind("oval", List.of(new Part(outline, 0, 10)), outline, false, 0);
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) -> {
              if (n <= 12) {
                Region wall = Region.oval(50 * ratio * 1.0001, 30 * ratio * 1.0001);
                assertFits(Questions.touching(wall, List.of(oval), n));
                Region tight = Region.oval(50 * ratio * 0.999, 30 * ratio * 0.999);
                assertFitsNot(Questions.touching(tight, List.of(oval), n));
              }
            });
  }

  @ParameterizedTest(name = "{0} circles of {1} in a half disc of 1")
  @CsvSource({"1, 0.5", "2, 0.414213562373095", "3, 0.333333333333333"})
  void packsHalfDiscsToTheirIdentities(int n, double radius) {
    // r = 1/2, 1/(1 + sqrt 2), 1/3: elementary.
    double whole = 100 / radius;
    assertFits(Questions.circles(Region.halfDisc(whole * 1.0001, Math.PI / 2, 0), n));
    assertFitsNot(Questions.circles(Region.halfDisc(whole * 0.9995, Math.PI / 2, 0), n));
  }

  @ParameterizedTest(name = "{0} ovals of half axes 1/2 and {1} in the unit square")
  @CsvSource({"2, 0.25", "3, 0.166666666666667"})
  void packsOvalsSideBySideInTheUnitSquare(int n, double halfWidth) {
    // P. Honvault 2015: two with half axes 1/2 and 1/4 just fit, three with 1/2 and 1/6.
    BodyKind oval = BodyKind.upright("oval", Oval.of(500, 1000 * halfWidth), 10);
    double side = 1000 * 1.0001;
    assertFits(Questions.touching(Region.rectangle(side, side), List.of(oval), n));
    double tight = 1000 * 0.999;
    assertFitsNot(Questions.touching(Region.rectangle(tight, tight), List.of(oval), n));
  }

  @Test
  void packsAnyDiscsOfHalfTheArea() {
    // S. Fekete, P. Keldenich, C. Scheffer 2019: discs of total area 1/2 always fit in a disc.
    SplittableRandom random = new SplittableRandom(2019);
    for (int i = 0; i < 40; i++) {
      List<BodyKind> kinds = new ArrayList<>();
      double left = 250 * 250 / 2.0;
      while (kinds.size() < 30 && left > 400) {
        double radius = 20 + random.nextDouble() * Math.max(0, Math.sqrt(left) - 20);
        kinds.add(BodyKind.round("disc", radius, 10));
        left -= radius * radius;
      }
      int[] ones = kinds.stream().mapToInt(kind -> 1).toArray();
      assertFits(Questions.touching(Region.disc(250), kinds, ones));
    }
  }

  @Test
  void allowsTwoEqualDiscsOfHalfTheRadius() {
    // The worst case of that theorem: two discs of half the radius, exactly half the area.
    assertFits(Questions.circles(Region.disc(200.0001), 2));
    assertThat(new ShelfPacker().pack(Questions.circles(Region.disc(199), 2), Effort.QUICK, 1))
        .isEqualTo(new DoesNotFit(Cause.PAIRWISE));
  }

  @Test
  void provesSevenCirclesAtTripleRadius() {
    // Groemer: 7.77 at n = 7, R = 3 r.
    double places = Math.PI * 4;
    assertThat(PackingBound.oler(places, 4 * Math.PI, 2)).isCloseTo(7.77, within(0.005));
    assertThat(new ShelfPacker().pack(Questions.circles(Region.disc(300), 8), Effort.QUICK, 1))
        .isEqualTo(new DoesNotFit(Cause.BOUND));
  }

  private static void assertFits(ShelfQuestion question) {
    ShelfAnswer answer = new ShelfPacker().pack(question, Effort.THOROUGH, 1);
    assertThat(answer).as(question.bodies() + " bodies").isInstanceOf(Packed.class);
    Judge.accepts(question, (Packed) answer);
  }

  private static void assertFitsNot(ShelfQuestion question) {
    assertThat(new ShelfPacker().pack(question, Effort.QUICK, 1))
        .as(question.bodies() + " bodies, too tight")
        .isInstanceOf(DoesNotFit.class);
  }
}
