package shelfful.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.Studios;
import shelfful.kiln.Chamber;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Kilns of which it is known beforehand what they lack. */
class PurchaseStudyTest {
  private static final PurchaseEffort EFFORT = new PurchaseEffort(2, 4);
  private static final Length LEG = Length.ofMillimetres(25.4);
  private static final Length HIGH = Length.ofMillimetres(101.6);

  /**
   * A round kiln with full shelves alone, one kind of post under the first and one between.
   *
   * @param height of the chamber, millimetres
   */
  private static Studio studio(int shelves, int legs, int highPosts, double height) {
    Studio all = Studios.studio();
    List<Kiln> kilns =
        all.kilns().stream()
            .filter(kiln -> kiln.id().equals("round"))
            .map(
                kiln ->
                    new Kiln(
                        kiln.id(),
                        kiln.name(),
                        kiln.loading(),
                        new Chamber(kiln.chamber().floorPlan(), Length.ofMillimetres(height)),
                        kiln.hottest(),
                        List.of(),
                        kiln.columnPlans().stream()
                            .filter(plan -> plan.id().equals("full"))
                            .toList()))
            .toList();
    List<Shelf> stock =
        all.shelves().stream()
            .filter(shelf -> shelf.id().equals("round"))
            .map(
                shelf ->
                    new Shelf(
                        shelf.id(),
                        shelf.name(),
                        shelf.outline(),
                        shelf.thickness(),
                        shelf.massLimit(),
                        shelf.hottest(),
                        shelves))
            .toList();
    Length across = Length.ofMillimetres(38);
    List<Post> posts =
        List.of(new Post("low", LEG, across, legs), new Post("high", HIGH, across, highPosts));
    return new Studio(
        all.name(), all.unit(), all.forms(), all.glazes(), kilns, stock, posts, all.rules());
  }

  private static List<Worth> worths(Studio studio, List<Purchase> purchases) {
    Batch many = Batches.glazed("BK", "beaker", "chalk", 250);
    LoadRequest request =
        new LoadRequest(
            studio,
            List.of(many),
            Firings.glaze("round"),
            Optional.of("full"),
            Optional.empty(),
            1,
            4);
    return new PurchaseStudy(List.of(request), EFFORT)
        .measure(purchases, Optional.of(new MonthlyFirings(10, 30)), worth -> {});
  }

  private static Worth of(List<Worth> worths, String words) {
    return worths.stream()
        .filter(worth -> worth.purchase().words().contains(words))
        .findFirst()
        .orElseThrow();
  }

  private static void onlyHelps(List<Worth> worths, String words, int layersNow) {
    Worth best = worths.get(0);
    assertThat(best.purchase().words()).contains(words);
    assertThat(best.gain().isClear()).isTrue();
    // Every layer is alike, so one more holds as many as each of the others, give or take the
    // layer under the lid, which may hold a beaker more or less.
    assertThat(best.gain().mean()).isCloseTo(best.piecesNow() / layersNow, within(2.0));
    for (Worth other : worths.subList(1, worths.size())) {
      assertThat(other.gain().isClear()).as(other.sentence()).isFalse();
      assertThat(other.sentence()).contains("no clear gain").doesNotContain("saves");
    }
    assertThat(best.savedPerMonth().orElseThrow())
        .isCloseTo(
            300 * best.gain().mean() / (best.piecesNow() + best.gain().mean()), within(1e-9));
  }

  @Test
  void aRefusedLoadIsNotCountedAsAnEmptyOne() {
    assertThatThrownBy(() -> PurchaseStudy.found(Optional.empty()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("refused every load");
  }

  /** Ten shelves, but posts for one layer on the floor and one over it. */
  @Test
  void aKilnShortOfPostsWantsPosts() {
    Studio studio = studio(10, 3, 3, 686);
    onlyHelps(worths(studio, Purchase.usual(studio, "round")), "(high)", 2);
  }

  /** Posts for many layers, but two shelves. */
  @Test
  void aKilnShortOfShelvesWantsAShelf() {
    Studio studio = studio(2, 30, 30, 686);
    onlyHelps(worths(studio, Purchase.usual(studio, "round")), "shelf", 2);
  }

  /**
   * Shelves and posts for many layers, but room for two of 16 mm; with 8 mm ones there is room for
   * a third. Heights: 25.4 + t + 101.6 + t, and over the top shelf 85 mm of beaker with its
   * millimetre of tolerance and 25 mm to the lid; a third layer wants 101.6 + t more.
   */
  @Test
  void aKilnShortOfHeightWantsThinnerShelves() {
    Studio studio = studio(10, 30, 30, 25.4 + 2 * 101.6 + 3 * 8 + 86 + 25 + 1);
    List<Purchase> purchases = new ArrayList<>(Purchase.usual(studio, "round"));
    purchases.addAll(Purchase.thinner(studio, "round", Length.ofMillimetres(8)));
    onlyHelps(worths(studio, purchases), "8 mm", 2);
  }
}
