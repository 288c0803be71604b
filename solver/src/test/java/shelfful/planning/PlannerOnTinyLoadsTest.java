package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomDice;
import shelfful.load.Load;
import shelfful.ware.Batch;

/**
 * Loads so small that the best is known: from the tables of equal discs in a disc, or by trying
 * every way of sharing the pieces out over layers.
 */
class PlannerOnTinyLoadsTest {
  private static final long STEPS = 60;

  /**
   * Feet stay 5 mm in from the edge of a shelf of 450 mm, glazed ware keeps 6 mm: N discs of
   * diameter d fit when ratio(N) (d/2 + 3) is at most 220 + 3. Ratios: Graham 1968 (N = 5 to 7),
   * Pirl 1969 (8), Melissen 1994 (11), Fodor 1999 (19) and 2003 (13). One layer, as the ware is as
   * high as the kiln. A thousandth is left for the search; the next ratio is out of reach by more.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1.0",
    "2, 2.0",
    "3, 2.1547005",
    "4, 2.4142136",
    "5, 2.7013016",
    "7, 3.0",
    "8, 3.3047649",
    "11, 3.9238044",
    "12, 4.0296019",
    "13, 4.2360680"
  })
  void oneShelfHoldsWhatTheTablesSay(int count, double ratio) {
    double diameter = 2 * (223 / (ratio * 1.001) - 3);
    Load load = new Scene().cup("a", diameter, 300).batch("A", "a", count + 1).plan(STEPS);
    assertThat(load.placed()).isEqualTo(count);
  }

  /** 20 + 10 + 120 + 10 + 120 + 10 + 100 = 390 mm, the chamber less the room under the lid. */
  @Test
  void heightsThatAddUpExactlyAreFound() {
    Scene scene =
        new Scene()
            .noPosts()
            .post("20", 20, 3)
            .post("120", 120, 6)
            .cup("low", 355, 100)
            .cup("high", 355, 110)
            .batch("L", "low", 1)
            .batch("H", "high", 2);
    assertThat(scene.plan(STEPS).placed()).isEqualTo(3);
    Scene tooMuch =
        new Scene()
            .noPosts()
            .post("20", 20, 3)
            .post("120", 120, 6)
            .cup("high", 355, 110)
            .batch("H", "high", 3);
    assertThat(tooMuch.plan(STEPS).placed()).isEqualTo(2);
  }

  /**
   * Drums so wide that each has a shelf of its own, yet clear of the posts: the question is only
   * which heights add up.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void theBestChoiceOfHeightsIsFound(long seed) {
    RandomDice dice = new RandomDice(seed);
    Scene scene = new Scene();
    List<Integer> heights = new ArrayList<>();
    int forms = dice.whole(2, 3);
    int pieces = 0;
    for (int f = 0; f < forms; f++) {
      int height = dice.whole(3, 20) * 10;
      int count = dice.whole(1, pieces > 4 ? 2 : 3);
      scene.cup("f" + f, 355, height).batch("B" + f, "f" + f, count);
      heights.addAll(java.util.Collections.nCopies(count, height));
      pieces += count;
    }
    assertThat(scene.plan(STEPS).placed()).isEqualTo(most(heights));
  }

  /** Tries every subset, lowest at the bottom or any of its pieces on top. */
  private static int most(List<Integer> heights) {
    int most = 0;
    for (int subset = 0; subset < 1 << heights.size(); subset++) {
      List<Integer> chosen = new ArrayList<>();
      for (int i = 0; i < heights.size(); i++) {
        if ((subset >> i & 1) == 1) {
          chosen.add(heights.get(i));
        }
      }
      if (chosen.size() > most && chosen.size() <= 5 && stands(chosen)) {
        most = chosen.size();
      }
    }
    return most;
  }

  /** Whether layers of these heights stand in the scene's kiln in any order. */
  static boolean stands(List<Integer> heights) {
    for (int top = 0; top < heights.size(); top++) {
      List<Integer> under = new ArrayList<>(heights);
      int onTop = under.remove(top);
      if (raise(under, new int[] {9, 12, 12}, 30, onTop)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Posts of 20, 80 and 120 mm in threes, singly or two on each other; 10 mm of headroom and 10 mm
   * of shelf on each level. Three posts of 20 mm are under the lowest shelf already.
   */
  private static boolean raise(List<Integer> under, int[] stock, int z, int onTop) {
    if (under.isEmpty()) {
      return z + onTop <= 390;
    }
    int[] lengths = {20, 80, 120};
    int level = under.get(0);
    List<Integer> rest = under.subList(1, under.size());
    for (int a = 0; a < 3; a++) {
      for (int b = -1; b <= a; b++) {
        int[] left = stock.clone();
        left[a] -= 3;
        int height = lengths[a];
        if (b >= 0) {
          left[b] -= 3;
          height += lengths[b];
        }
        boolean there = left[a] >= 0 && (b < 0 || left[b] >= 0);
        if (there && height >= level + 10 && raise(rest, left, z + height + 10, onTop)) {
          return true;
        }
      }
    }
    return false;
  }

  /** One of 300 mm takes the whole kiln, low ones stand on several layers and are worth more. */
  @Test
  void theTallPieceWaitsUnlessItMustGo() {
    Load load = lowAndTall().plan(STEPS);
    assertThat(load.leftOut()).extracting(out -> out.pieceId()).containsExactly("T-001");
    Scene urgent = lowAndTall();
    urgent.but(PlannerOnTinyLoadsTest::mustGo);
    assertThat(urgent.plan(STEPS).leftOut())
        .extracting(out -> out.pieceId())
        .doesNotContain("T-001")
        .isNotEmpty();
  }

  private static Scene lowAndTall() {
    return new Scene()
        .cup("low", 200, 60)
        .cup("tall", 355, 300)
        .batch("L", "low", 8)
        .batch("T", "tall", 1);
  }

  private static Batch mustGo(Batch batch) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        true,
        batch.priority(),
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }
}
