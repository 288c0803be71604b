package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.geometry.Region;

/**
 * The packer against best-known packings. Sources: the published record tables of equal circles in
 * a circle and in a square; radii 1 to n from T. Ye, W. Huang, Z. Lu, arXiv:1306.0694 (2013).
 */
class RecordTablesTest {
  /** Enough for radii 1 to 20 within half a per cent of the best known. */
  private static final Effort LONG = new Effort(20, 4000);

  @Test
  void packsEqualCirclesInACircleAtTheRecordRatio() {
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) ->
                assertFits(
                    Questions.circles(Region.disc(100 * ratio * 1.0001), n), n + " circles"));
  }

  @Test
  void neverPacksEqualCirclesTighterThanTheRecord() {
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) -> {
              ShelfQuestion question = Questions.circles(Region.disc(100 * ratio * 0.9998), n);
              assertThat(new ShelfPacker().pack(question, new Effort(4, 40), 1))
                  .as(n + " circles")
                  .isInstanceOf(DoesNotFit.class);
            });
  }

  @ParameterizedTest(name = "{0} circles at ratio {1}")
  @CsvSource({"39, 7.0579", "45, 7.5730", "50, 7.9476", "55, 8.2112", "61, 8.6613"})
  void packsLargerRecordsThatAreKnownFromMemory(int n, double ratio) {
    assertFits(Questions.circles(Region.disc(100 * ratio * 1.0001), n), n + " circles");
  }

  @Test
  void packsEqualCirclesInASquareAtTheRecordSide() {
    Tables.circlesInSquare()
        .forEach(
            (n, side) -> {
              double width = 100 * side * 1.0001;
              assertFits(Questions.circles(Region.rectangle(width, width), n), n + " in a square");
            });
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 6, 7, 8, 9, 10, 11, 12})
  void packsRadiiOneToTwelveWithinATenthOfAPerCent(int n) {
    double best = Tables.radiiOneTo().get(n);
    assertThat(new ShelfPacker().pack(Questions.radiiOneTo(n, best * 1.001), LONG, 1))
        .isInstanceOf(Packed.class);
  }

  @ParameterizedTest
  @ValueSource(ints = {13, 14, 15, 16, 17, 18, 19, 20})
  void packsRadiiOneToTwentyWithinHalfAPerCent(int n) {
    double best = Tables.radiiOneTo().get(n);
    assertThat(new ShelfPacker().pack(Questions.radiiOneTo(n, best * 1.005), LONG, 1))
        .isInstanceOf(Packed.class);
  }

  @Test
  void neverBoundsBelowARecord() {
    Map<Integer, Double> records = new TreeMap<>(Tables.circlesInCircle());
    BodyKind circle = BodyKind.round("circle", 100, 10);
    records.forEach(
        (n, ratio) -> {
          Room room = new Room(Region.disc(100 * ratio), 0, Applies.BODY);
          assertThat(PackingBound.most(ShelfSpace.of(room), circle, 0)).isGreaterThanOrEqualTo(n);
        });
    Tables.circlesInSquare()
        .forEach(
            (n, side) -> {
              Room room = new Room(Region.rectangle(100 * side, 100 * side), 0, Applies.BODY);
              assertThat(PackingBound.most(ShelfSpace.of(room), circle, 0))
                  .isGreaterThanOrEqualTo(n);
            });
  }

  private static void assertFits(ShelfQuestion question, String what) {
    ShelfAnswer answer = new ShelfPacker().pack(question, Effort.THOROUGH, 1);
    assertThat(answer).as(what).isInstanceOf(Packed.class);
    Judge.accepts(question, (Packed) answer);
  }
}
