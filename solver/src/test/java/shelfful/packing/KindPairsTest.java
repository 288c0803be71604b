package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;

class KindPairsTest {
  /** All parts that share heights are looked at by {@link Spare#gap}. */
  @Test
  void theNearestPairsGiveTheGapOfAllPartsAndNoneIsWiderApart() {
    RandomQuestions questions = new RandomQuestions(46);
    SplittableRandom random = new SplittableRandom(47);
    KindPairs pairs = new KindPairs();
    int left = 0;
    for (int i = 0; i < 200; i++) {
      ShelfQuestion question = questions.next();
      for (BodyKind a : question.kinds()) {
        for (BodyKind b : question.kinds()) {
          KindPairs.Parts parts = pairs.of(a, b);
          Pose at = new Pose(between(random), between(random), random.nextDouble() * 6);
          double all = Spare.gap(a, Pose.HERE, b, at);
          double least = Double.POSITIVE_INFINITY;
          int[] nearest = parts.nearest();
          for (int p = 0; p < nearest.length; p += 2) {
            Part first = a.parts().get(nearest[p]);
            Part second = b.parts().get(nearest[p + 1]);
            least = Math.min(least, Gap.between(first.shape(), Pose.HERE, second.shape(), at));
            double radii = first.shape().outerRadius() + second.shape().outerRadius();
            assertThat(radii).isLessThanOrEqualTo(parts.widest());
          }
          left += nearest.length / 2 < a.parts().size() * b.parts().size() ? 1 : 0;
          assertThat(parts.none()).isEqualTo(Double.isInfinite(all));
          if (!parts.none()) {
            assertThat(least).isCloseTo(all, within(1e-9));
          }
        }
      }
    }
    assertThat(left).as("pairs of kinds of which not all parts are looked at").isGreaterThan(100);
  }

  @Test
  void workedOutOnce() {
    BodyKind cup = BodyKind.round("cup", 40, 90);
    KindPairs pairs = new KindPairs();
    assertThat(pairs.of(cup, cup)).isSameAs(pairs.of(cup, cup));
  }

  private static double between(SplittableRandom random) {
    return 400 * random.nextDouble() - 200;
  }
}
