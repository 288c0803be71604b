package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.inspect.Limits.limit;
import static shelfful.inspect.Scenes.at;
import static shelfful.inspect.Scenes.chalk;
import static shelfful.inspect.Scenes.column;
import static shelfful.inspect.Scenes.mm;
import static shelfful.inspect.Scenes.round;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.kiln.Column;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.load.Load;
import shelfful.load.StandingPost;
import shelfful.studio.Studio;

/** Heights, shelves and posts at, over and under what each rule asks. */
class HeightLimitsTest {
  @TestFactory
  Stream<DynamicTest> heights() {
    return Stream.of(
        limit(
            "a beaker of 85 mm under posts of 101.6 mm",
            Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS,
            spare -> beaker(Scenes.withHeadroom(101.6 - 85 - 1 - spare))),
        limit(
            "a beaker that ends at 244 mm in a chamber of 686 mm",
            Rule.PIECE_TOO_CLOSE_TO_LID,
            spare -> beaker(Scenes.withUnderLid(686 - 244 - 1 - spare))),
        limit(
            "a shelf at 159 mm in a chamber of 686 mm",
            Rule.COLUMN_TALLER_THAN_CHAMBER,
            spare -> beaker(Scenes.withUnderLid(686 - 159 - spare))),
        limit(
            "a lowest shelf on inch posts",
            Rule.SHELF_TOO_LOW,
            spare -> beaker(Scenes.withOffFloor(25.4 - spare))),
        limit(
            "a wish for higher layers",
            Rule.LAYER_LOWER_THAN_WISHED,
            spare -> beaker(withLeastHeight(101.6 - spare))));
  }

  private static Load beaker(Studio studio) {
    return round(studio, List.of("4in"), chalk("A", "beaker", 2))
        .place("F1", "A-001", 0, 0, 0)
        .place("F2", "A-002", 0, 0, 0)
        .load();
  }

  private static Studio withLeastHeight(double millimetres) {
    return Scenes.withClearances(
        old ->
            new shelfful.studio.Clearances(
                old.glazedToGlazed(),
                old.bisqueToBisque(),
                old.wareToPost(),
                old.wareToWall(),
                old.wareToKeepOut(),
                old.footToShelfEdge(),
                old.headroom(),
                old.underLid(),
                old.offFloor(),
                mm(millimetres)));
  }

  @TestFactory
  Stream<DynamicTest> shelvesAndPosts() {
    return Stream.of(
        limit(
            "a post beside its position",
            Rule.POST_NOT_IN_PLACE,
            spare -> postMoved(0, 1 - Math.min(spare, 1))),
        limit(
            "a post beside the one below",
            Rule.POST_NOT_ON_POST,
            spare -> postMoved(3, 1 - Math.min(spare, 1))),
        limit(
            "a round shelf in a round chamber",
            Rule.SHELF_TOO_CLOSE_TO_WALL,
            spare -> shelfIn(new FloorPlan.Round(mm(540 + spare)))),
        limit(
            "a slab in a rectangular chamber",
            Rule.SHELF_TOO_CLOSE_TO_WALL,
            spare -> slabs(new FloorPlan.Rectangle(mm(508 + spare), mm(600)), List.of())),
        limit(
            "a slab in an oval chamber of the same proportions",
            Rule.SHELF_TOO_CLOSE_TO_WALL,
            spare ->
                slabs(
                    new FloorPlan.Oval(
                        mm(508 * Math.sqrt(2) + spare), mm(406 * Math.sqrt(2) + spare)),
                    List.of())),
        limit(
            "a slab beside a thermocouple",
            Rule.SHELF_MEETS_KEEP_OUT,
            spare -> slabs(wide(), List.of(pin(254 + 4 + spare, 25.4, 41.4)))),
        limit(
            "a slab under a peephole line",
            Rule.SHELF_MEETS_KEEP_OUT,
            spare -> slabs(wide(), List.of(pin(0, 41.4 + spare, 60)))),
        limit("two slabs side by side", Rule.SHELVES_COLLIDE, spare -> twoSlabs(254 + spare)),
        limit("two posts side by side", Rule.POSTS_COLLIDE, spare -> extraPost(38 + spare)),
        limit(
            "the middle of a slab within its posts",
            Rule.SHELF_UNSUPPORTED,
            spare -> slabs(wide(), List.of(), at(-200, -spare), at(200, -spare), at(0, 150))));
  }

  private static Load postMoved(int index, double by) {
    Load load = round(chalk("A", "beaker", 1)).load();
    List<StandingPost> posts = new ArrayList<>(load.posts());
    StandingPost old = posts.get(index);
    posts.set(
        index,
        new StandingPost(
            at(old.at().x().millimetres() + by, old.at().y().millimetres()), old.base(),
            old.postIds(), old.carries()));
    return new Load(load.request(), "full", load.layers(), posts, load.leftOut());
  }

  private static Load shelfIn(FloorPlan plan) {
    return single(
        Scenes.kiln(
            "own",
            plan,
            List.of(),
            column("C", "round", 0, 0, at(0, 200), at(-170, -100), at(170, -100))));
  }

  private static Load slabs(FloorPlan plan, List<KeepOut> keepOuts) {
    return slabs(plan, keepOuts, at(-200, -150), at(200, -150), at(0, 150));
  }

  private static Load slabs(
      FloorPlan plan, List<KeepOut> keepOuts, shelfful.measure.Point... posts) {
    return single(Scenes.kiln("own", plan, keepOuts, column("C", "slab", 0, 0, posts)));
  }

  private static Load single(Kiln kiln) {
    return new LoadDraft(
            Scenes.withKiln(kiln), Firings.glaze("own"), "one", chalk("A", "beaker", 1))
        .level("C", "1in")
        .load();
  }

  private static FloorPlan wide() {
    return new FloorPlan.Rectangle(mm(2000), mm(2000));
  }

  /** A thermocouple of 8 mm across, straight up. */
  private static KeepOut pin(double x, double from, double to) {
    return new KeepOut(
        "pin", KeepOut.Kind.THERMOCOUPLE, at(x, 0), at(x, 0), mm(8), mm(from), mm(to));
  }

  private static Load twoSlabs(double x) {
    Column left = column("L", "slab", -254, 0, at(-450, -150), at(-60, -150), at(-250, 150));
    Column right = column("R", "slab", x, 0, at(60, -150), at(450, -150), at(250, 150));
    return new LoadDraft(
            Scenes.withKiln(Scenes.kiln("own", wide(), List.of(), left, right)),
            Firings.glaze("own"),
            "one",
            chalk("A", "beaker", 1))
        .level("L", "1in")
        .level("R", "1in")
        .load();
  }

  private static Load extraPost(double away) {
    Load load = round(chalk("A", "beaker", 1)).load();
    List<StandingPost> posts = new ArrayList<>(load.posts());
    StandingPost old = posts.get(0);
    posts.add(
        new StandingPost(
            at(old.at().x().millimetres() + away, old.at().y().millimetres()), old.base(),
            old.postIds(), old.carries()));
    return new Load(load.request(), "full", load.layers(), posts, load.leftOut());
  }

  @Test
  void asksHeadroomOnlyUnderShelvesThatAreOverThePiece() {
    // A bottle of 260 mm at the front while the back column is full of low layers.
    Load load =
        new LoadDraft(
                Scenes.withHeadroom(12.7),
                Firings.glaze("round"),
                "halves",
                chalk("A", "bottle", 1))
            .level("B", "1in")
            .level("B", "4in")
            .level("B", "4in")
            .level("V", "1in")
            .place("V1", "A-001", 0, -80, 0)
            .load();
    assertThat(Limits.rules(load)).isEmpty();
  }
}
