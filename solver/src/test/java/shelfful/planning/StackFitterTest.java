package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Firings;
import shelfful.fixture.Kilns;
import shelfful.fixture.Studios;
import shelfful.kiln.KeepOut;
import shelfful.load.LoadRequest;
import shelfful.measure.Point;
import shelfful.planning.Stacking.LevelStand;

/**
 * Heights added up by hand: shelves 10 mm thick, headroom 10, off the floor 20, room under the lid
 * 10, posts of 20, 80 and 120 mm and what two of them make, chamber 400 mm.
 */
class StackFitterTest {
  private static Optional<Stacking> fit(Scene scene, double... tallest) {
    Stand stand = scene.stand();
    StackNeeds needs = new StackNeeds(1);
    for (int l = 0; l < tallest.length; l++) {
      needs = needs.with(0, l, level(tallest[l], 500));
    }
    return new StackFitter(stand, new PostCupboard(stand.request().studio())).fit(needs);
  }

  private static StackNeeds.Level level(double tallest, long... grams) {
    return new StackNeeds.Level(Math.round(tallest * 1000), grams);
  }

  private static LevelStand level(Optional<Stacking> stacking, int level) {
    return stacking.orElseThrow().level(0, level);
  }

  private static KeepOut bar(KeepOut.Kind kind, double x, double bottom, double top) {
    Point at = Point.ofMillimetres(x, 0);
    return new KeepOut("bar", kind, at, at, Scene.mm(10), Scene.mm(bottom), Scene.mm(top));
  }

  @Test
  void oneShelfLiesOnTheLowestPostsOffTheFloor() {
    LevelStand only = level(fit(new Scene(), 60), 0);
    assertThat(only.underside()).isEqualTo(20_000);
    assertThat(only.z()).isEqualTo(30_000);
    assertThat(only.room()).isEqualTo(360_000);
    assertThat(only.postsOn()).isEmpty();
  }

  @Test
  void aLayerIsAsHighAsItsTallestAndTheHeadroom() {
    Optional<Stacking> exact = fit(new Scene(), 70, 60);
    assertThat(level(exact, 0).room()).isEqualTo(70_000);
    assertThat(level(exact, 1).z()).isEqualTo(120_000);
    Optional<Stacking> over = fit(new Scene(), 70.001, 60);
    assertThat(level(over, 0).room()).isEqualTo(90_000);
  }

  @Test
  void theChamberIsFullToTheMicrometre() {
    assertThat(fit(new Scene(), 360)).isPresent();
    assertThat(fit(new Scene(), 360.001)).isEmpty();
    // 20 + 10 + 120 + 10 + 120 + 10 + 100 = 390.
    assertThat(fit(new Scene(), 110, 110, 100)).isPresent();
    assertThat(fit(new Scene(), 110, 110, 100.001)).isEmpty();
  }

  @Test
  void postsAreFinite() {
    Scene scene = new Scene().noPosts().post("20", 20, 6).post("120", 120, 3);
    // The second level's posts are 120, or 20 and 120; a third level has neither.
    assertThat(fit(scene, 30, 30)).isPresent();
    assertThat(fit(scene, 30, 30, 30)).isEmpty();
  }

  @Test
  void equalPostsMayBeMadeDifferently() {
    Scene scene = new Scene().noPosts().post("20", 20, 3).post("80", 80, 1).post("40", 40, 4);
    Stacking stacking = fit(scene, 70, 30).orElseThrow();
    List<int[]> makings = stacking.posts().get(1).makings();
    assertThat(makings).extracting(m -> m.length).containsExactly(1, 2, 2);
  }

  @Test
  void shelvesAreFinite() {
    assertThat(fit(new Scene().shelves(2), 30, 30)).isPresent();
    assertThat(fit(new Scene().shelves(1), 30, 30)).isEmpty();
    assertThat(fit(new Scene().shelves(0), 30)).isEmpty();
  }

  @Test
  void shelvesThatCarryTooMuchAreCounted() {
    assertThat(fit(new Scene().shelvesCarry(0.5), 30, 30).orElseThrow().overloaded()).isZero();
    assertThat(fit(new Scene().shelvesCarry(0.4), 30, 30).orElseThrow().overloaded()).isEqualTo(2);
  }

  @Test
  void noShelfLiesInAThermocouple() {
    // Posts of 20 would put the shelf at 20 to 30, posts of 40 put it over.
    Scene scene = new Scene().keepOut(bar(KeepOut.Kind.THERMOCOUPLE, 220, 25, 40));
    assertThat(level(fit(scene, 30), 0).underside()).isEqualTo(40_000);
    Scene outside = new Scene().keepOut(bar(KeepOut.Kind.THERMOCOUPLE, 231, 25, 40));
    assertThat(level(fit(outside, 30), 0).underside()).isEqualTo(20_000);
  }

  @Test
  void aConePackStandsOnWhateverShelf() {
    Scene scene = new Scene().keepOut(bar(KeepOut.Kind.CONE_PACK, 0, 25, 40));
    assertThat(level(fit(scene, 30), 0).underside()).isEqualTo(20_000);
  }

  @Test
  void noPostStandsInAKeepOut() {
    Point post = new Scene().stand().column(0).posts().get(0);
    KeepOut over =
        new KeepOut(
            "pack", KeepOut.Kind.CONE_PACK, post, post, Scene.mm(10), Scene.mm(60), Scene.mm(90));
    // One level needs no post that high; a second one would stand in it.
    assertThat(fit(new Scene().keepOut(over), 30)).isPresent();
    assertThat(fit(new Scene().keepOut(over), 100, 30)).isEmpty();
  }

  @Test
  void aFullShelfOverHalvesLiesLevel() {
    LoadRequest request = inTheRoundKiln();
    Stand stand = new Stand(request, Kilns.fullOverHalves());
    StackNeeds needs =
        new StackNeeds(3)
            .with(0, 0, level(90, 1))
            .with(1, 0, level(40, 1))
            .with(2, 0, level(60, 1));
    Stacking stacking =
        new StackFitter(stand, new PostCupboard(request.studio())).fit(needs).orElseThrow();
    long underside = stacking.level(2, 0).underside();
    for (LevelStand top : List.of(stacking.level(0, 0), stacking.level(1, 0))) {
      assertThat(top.z() + top.room() + stand.headroom()).isEqualTo(underside);
    }
    assertThat(stacking.level(0, 0).room()).isGreaterThanOrEqualTo(90_000);
    assertThat(stacking.level(1, 0).room()).isGreaterThanOrEqualTo(40_000);
  }

  @Test
  void nothingStandsOverHalvesOfWhichOneIsMissing() {
    LoadRequest request = inTheRoundKiln();
    Stand stand = new Stand(request, Kilns.fullOverHalves());
    StackNeeds needs = new StackNeeds(3).with(0, 0, level(90, 1)).with(2, 0, level(60, 1));
    assertThat(new StackFitter(stand, new PostCupboard(request.studio())).fit(needs)).isEmpty();
  }

  private static LoadRequest inTheRoundKiln() {
    return new LoadRequest(
        Studios.studio(),
        List.of(),
        Firings.glaze("round"),
        Optional.empty(),
        Optional.empty(),
        1,
        0);
  }
}
