package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

class PackingBoundTest {
  private static final double[][] TOUCHING = {{0}};

  @Test
  void holdsWithEqualityForATriangleOfPoints() {
    // Oler's bound is attained by triangles of the hexagonal lattice: side k d holds
    // (k + 1)(k + 2)/2 points.
    for (int k = 1; k < 8; k++) {
      double area = Math.sqrt(3) / 4 * k * k;
      assertThat(PackingBound.oler(area, 3 * k, 1))
          .isCloseTo((k + 1) * (k + 2) / 2.0, within(1e-9));
    }
  }

  @Test
  void refusesADistanceOfNothing() {
    assertThatThrownBy(() -> PackingBound.oler(1, 1, 0)).hasMessageContaining("distance");
  }

  @Test
  void countsBodiesWithTheirClearance() {
    BodyKind pot = BodyKind.round("pot", 47, 10);
    Room room = new Room(Region.disc(303), 6, Applies.BODY);
    // With 6 mm between pots and to the wall this is pots of 50 in a circle of 300; the record for
    // 27 is 5.906, for 28 6.015.
    assertThat(PackingBound.most(ShelfSpace.of(room), pot, 6)).isBetween(27, 31);
    assertThat(PackingBound.most(ShelfSpace.of(room), BodyKind.round("vat", 298, 10), 6)).isZero();
    assertThat(PackingBound.most(ShelfSpace.of(room), BodyKind.round("vat", 290, 10), 6)).isOne();
  }

  @Test
  void boundsOvalsByArea() {
    BodyKind oval = BodyKind.upright("oval", Oval.of(100, 20), 10);
    ShelfSpace disc = ShelfSpace.of(new Room(Region.disc(300), 0, Applies.BODY));
    assertThat(PackingBound.most(disc, oval, 0)).isLessThanOrEqualTo(300 * 300 / (100 * 20));
  }

  @Test
  void takesAwayTheAreaOfPosts() {
    List<BodyKind> kinds = List.of(BodyKind.round("pot", 40, 50));
    ShelfSpace shelf = Questions.shelfOnThreePosts();
    double bare =
        PackingBound.areaBudgets(new ShelfSpace(shelf.rooms(), List.of()), kinds, TOUCHING)
            .get(0)
            .room();
    double posts = PackingBound.areaBudgets(shelf, kinds, TOUCHING).get(0).room();
    assertThat(bare - posts).isCloseTo(3 * Math.PI * 29 * 29, within(1e-6));
  }

  @Test
  void holdsForEveryContentOfAShelf() {
    RandomQuestions questions = new RandomQuestions(47);
    for (int i = 0; i < 100; i++) {
      ShelfQuestion question = questions.next();
      if (new ShelfPacker().pack(question, Effort.QUICK, 1) instanceof Packed) {
        PackingBound.areaBudgets(question.space(), question.kinds(), question.clearance())
            .forEach(
                budget ->
                    assertThat(budget.taken(question.counts()))
                        .isLessThanOrEqualTo(budget.room() * (1 + 1e-9)));
      }
    }
  }
}
