package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.bound.LimitCause;
import shelfful.bound.LoadBound;
import shelfful.fixture.Forms;
import shelfful.load.LoadRequest;

/** Bounds of loads small enough to know what they can hold. */
class LoadsAndTheirBoundTest {
  private static final int STEPS = 60;

  private static LoadBound bound(Scene scene) {
    LoadBound bound = LoadBound.of(scene.request());
    bound.refine(STEPS);
    return bound;
  }

  /** The scene's only shelf has nothing over it: a room of 450 mm in one of 500. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("tinyLoads")
  void isNeverBelowTheBestOfEverySelection(long seed) {
    TinyLoad tiny = TinyLoad.of(new Random(seed));
    LoadBound bound = bound(tiny.scene());
    TinyLoad.Best best = tiny.best();
    assertThat(bound.mostPieces()).isGreaterThanOrEqualTo(best.pieces());
    assertThat(bound.mostWorth()).isGreaterThanOrEqualTo(best.worth());
  }

  static LongStream tinyLoads() {
    return LongStream.range(0, Long.getLong("tinyLoads", 40));
  }

  @Test
  void startsWithTheListAndOnlyFalls() {
    LoadBound bound =
        LoadBound.of(new Scene().cup("a", 80, 70).cup("b", 50, 60).batch("A", "a", 200).request());
    int last = bound.mostPieces();
    assertThat(last).isEqualTo(200);
    assertThat(bound.cause()).isEqualTo(LimitCause.LIST);
    for (int i = 0; i < 40; i++) {
      bound.refine(1);
      assertThat(bound.mostPieces()).isLessThanOrEqualTo(last);
      last = bound.mostPieces();
    }
    assertThat(last).isLessThan(100);
  }

  @Test
  void theSameStepsGiveTheSameBound() {
    LoadRequest request =
        new Scene().cup("a", 80, 70).cup("b", 50, 60).batch("A", "a", 60).request();
    LoadBound one = LoadBound.of(request);
    LoadBound other = LoadBound.of(request);
    one.refine(30);
    for (int i = 0; i < 30; i++) {
      other.refine(1);
    }
    assertThat(other.mostPieces()).isEqualTo(one.mostPieces());
    assertThat(other.mostWorth()).isEqualTo(one.mostWorth());
  }

  @Test
  void aListThatFitsIsItsOwnBound() {
    LoadBound bound = bound(new Scene().cup("a", 80, 70).batch("A", "a", 5));
    assertThat(bound.mostPieces()).isEqualTo(5);
    assertThat(bound.cause()).isEqualTo(LimitCause.LIST);
  }

  /** Three dishes of 150 mm and their gap need 2.1547 × 78 = 168 of 225 mm, four 188, seven 234. */
  @Test
  void namesTheSpaceOnTheShelvesForWideDishes() {
    LoadBound bound = bound(new Scene().shelves(1).cup("a", 150, 60).batch("A", "a", 30));
    assertThat(bound.mostPieces()).isBetween(5, 6);
    assertThat(bound.cause()).isIn(LimitCause.SPACING, LimitCause.SHELVES);
  }

  /** Four kilograms on each of five shelves, cups of one kilogram. */
  @Test
  void namesTheMassThatShelvesCarry() {
    LoadBound bound =
        bound(new Scene().chamber(500, 300).shelvesCarry(4).cup("a", 60, 60).batch("A", "a", 90));
    assertThat(bound.mostPieces()).isLessThanOrEqualTo(12);
    assertThat(bound.cause()).isEqualTo(LimitCause.MASS);
  }

  @Test
  void namesTheShelvesWhenThereAreTwo() {
    LoadBound bound =
        bound(new Scene().chamber(500, 800).shelves(2).cup("a", 60, 60).batch("A", "a", 300));
    assertThat(bound.cause()).isEqualTo(LimitCause.SHELVES);
  }

  /** Six posts of 80 mm stand under two shelves; the six of 20 mm under none with ware. */
  @Test
  void namesThePostsWhenThereAreFew() {
    Scene scene = new Scene().chamber(500, 800).noPosts().post("20", 20, 3).post("80", 80, 3);
    LoadBound bound = bound(scene.cup("a", 60, 60).batch("A", "a", 300));
    LoadBound more =
        bound(
            new Scene()
                .chamber(500, 800)
                .noPosts()
                .post("20", 20, 3)
                .post("80", 80, 30)
                .cup("a", 60, 60)
                .batch("A", "a", 300));
    assertThat(bound.cause()).isEqualTo(LimitCause.POSTS);
    assertThat(more.mostPieces()).isGreaterThan(bound.mostPieces() * 3 / 2);
  }

  /** Every cup that is low enough has room; the tall one stands under no shelf and no lid. */
  @Test
  void whatIsTallerThanTheChamberDoesNotCount() {
    Scene scene = new Scene().cup("a", 60, 60).cup("t", 60, 700).batch("A", "a", 3);
    LoadBound bound = bound(scene.batch("T", "t", 3));
    assertThat(bound.mostPieces()).isEqualTo(3);
    assertThat(bound.cause()).isEqualTo(LimitCause.HEIGHT);
  }

  @Test
  void countsNothingThatMayNotGoIn() {
    LoadBound bound =
        bound(
            new Scene()
                .form(Forms.mug())
                .batch("A", "mug", 3)
                .batch("B", "mug", 4)
                .but(PlainBatch::dry));
    assertThat(bound.mostPieces()).isEqualTo(3);
  }

  /** With a step count of its own a dual is only so exact; two in a hundred is what is left. */
  @Test
  void moreShelvesPostsOrWareDoNotLowerIt() {
    List<Scene> growing = new ArrayList<>();
    for (int shelves = 1; shelves <= 5; shelves++) {
      for (int posts : List.of(3, 6, 12)) {
        Scene scene = new Scene().chamber(500, 600).shelves(shelves).noPosts();
        scene.post("20", 20, 12).post("80", 80, posts).cup("a", 70, 60).cup("b", 110, 40);
        growing.add(scene.batch("A", "a", 60).batch("B", "b", 10 * shelves));
      }
    }
    int[] most = growing.stream().mapToInt(scene -> bound(scene).mostPieces()).toArray();
    for (int i = 0; i < most.length; i++) {
      if (i % 3 > 0) {
        assertThat(most[i] * 1.02).isGreaterThanOrEqualTo(most[i - 1]);
      }
      if (i >= 3) {
        assertThat(most[i] * 1.02).isGreaterThanOrEqualTo(most[i - 3]);
      }
    }
  }
}
