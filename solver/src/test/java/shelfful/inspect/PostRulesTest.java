package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.inspect.Limits.rules;
import static shelfful.inspect.Scenes.at;
import static shelfful.inspect.Scenes.chalk;
import static shelfful.inspect.Scenes.column;
import static shelfful.inspect.Scenes.mm;
import static shelfful.inspect.Scenes.round;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Loads;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.load.Load;
import shelfful.load.StandingPost;

/** Posts that are said to do what they do not, and posts and shelves in each other's way. */
class PostRulesTest {
  /**
   * Two full shelves: F1 at 41.4 mm on inch posts, F2 at 159 mm; posts 0 to 2 under F1, 3 to 5
   * under F2.
   */
  private static Load twoShelves() {
    return round(chalk("A", "beaker", 1)).load();
  }

  private static Load with(Load load, int index, StandingPost post) {
    List<StandingPost> posts = new ArrayList<>(load.posts());
    posts.set(index, post);
    return new Load(load.request(), load.columnPlanId(), load.layers(), posts, load.leftOut());
  }

  private static Load plus(Load load, StandingPost post) {
    List<StandingPost> posts = new ArrayList<>(load.posts());
    posts.add(post);
    return new Load(load.request(), load.columnPlanId(), load.layers(), posts, load.leftOut());
  }

  @Test
  void refusesAPostThatCarriesTwoLevels() {
    StandingPost old = twoShelves().posts().get(3);
    StandingPost both = new StandingPost(old.at(), old.base(), old.postIds(), List.of("F1", "F2"));
    assertThat(rules(with(twoShelves(), 3, both))).contains(Rule.POST_NOT_IN_PLACE.id());
  }

  @Test
  void refusesAPostThatCarriesNothing() {
    StandingPost idle =
        new StandingPost(twoShelves().posts().get(3).at(), mm(159), List.of("1in"), List.of());
    assertThat(rules(plus(twoShelves(), idle))).containsExactly(Rule.POST_NOT_IN_PLACE.id());
  }

  @Test
  void refusesAPostAtNoPositionOfTheColumn() {
    StandingPost fourth = new StandingPost(at(0, 0), mm(0), List.of("1in"), List.of("F1"));
    assertThat(rules(plus(twoShelves(), fourth))).containsExactly(Rule.POST_NOT_IN_PLACE.id());
  }

  @Test
  void refusesTwoPostsAtOnePosition() {
    Load load = twoShelves();
    assertThat(rules(plus(load, load.posts().get(0))))
        .contains(Rule.POST_NOT_IN_PLACE.id(), Rule.POSTS_COLLIDE.id());
  }

  @Test
  void wantsEveryShelfThatLiesOnAPostNamed() {
    Load load = Loads.sharedHalves();
    StandingPost shared = load.posts().get(0);
    assertThat(shared.carries()).hasSize(2);
    StandingPost half =
        new StandingPost(
            shared.at(), shared.base(), shared.postIds(), shared.carries().subList(0, 1));
    assertThat(rules(with(load, 0, half))).contains(Rule.POST_NOT_IN_PLACE.id());
  }

  @Test
  void refusesAPostThatHangsInTheAir() {
    // An inch higher at the foot and an inch shorter: it ends where it should.
    StandingPost old = twoShelves().posts().get(3);
    StandingPost raised =
        new StandingPost(old.at(), old.base().plus(mm(25.4)), List.of("3in"), old.carries());
    assertThat(rules(with(twoShelves(), 3, raised)))
        .contains(Rule.POST_LENGTH_WRONG.id(), Rule.POST_NOT_ON_POST.id());
  }

  @Test
  void namesEveryPostWithTheWrongBase() {
    Load load = twoShelves();
    for (int index = 3; index < 6; index++) {
      StandingPost old = load.posts().get(index);
      load =
          with(
              load,
              index,
              new StandingPost(old.at(), old.base().plus(mm(25.4)), List.of("3in"), old.carries()));
    }
    assertThat(rules(load))
        .filteredOn(Rule.POST_LENGTH_WRONG.id()::equals)
        .as("equal lengths, right tops, wrong bases")
        .hasSize(3);
  }

  @Test
  void refusesAPostOfNoPieces() {
    StandingPost old = twoShelves().posts().get(0);
    StandingPost nothing = new StandingPost(old.at(), old.base(), List.of(), old.carries());
    assertThat(rules(with(twoShelves(), 0, nothing))).contains(Rule.POST_WRONG.id());
  }

  @Test
  void countsOnlyPostsThatReachTheShelf() {
    StandingPost old = twoShelves().posts().get(3);
    StandingPost low = new StandingPost(old.at(), old.base(), List.of("3in"), old.carries());
    assertThat(rules(with(twoShelves(), 3, low)))
        .contains(Rule.SHELF_UNSUPPORTED.id(), Rule.POST_LENGTH_WRONG.id());
  }

  @Test
  void refusesAPostThroughAShelf() {
    StandingPost tall = new StandingPost(at(0, 0), mm(41.4), List.of("8in"), List.of("F2"));
    assertThat(rules(plus(twoShelves(), tall))).contains(Rule.SHELVES_COLLIDE.id());
  }

  @Test
  void letsAConePackStandOnAShelfButNoPostInIt() {
    assertThat(rules(withConePackAt(0, 0))).isEmpty();
    assertThat(rules(withConePackAt(-200, -150))).contains(Rule.SHELF_MEETS_KEEP_OUT.id());
  }

  /** From under the shelf's slab to well over it. */
  private static Load withConePackAt(double x, double y) {
    KeepOut pack =
        new KeepOut("pack", KeepOut.Kind.CONE_PACK, at(x, y), at(x, y), mm(30), mm(20), mm(90));
    return new LoadDraft(
            Scenes.withKiln(
                Scenes.kiln(
                    "own",
                    new FloorPlan.Rectangle(mm(800), mm(800)),
                    List.of(pack),
                    column("C", "slab", 0, 0, at(-200, -150), at(200, -150), at(0, 150)))),
            Firings.glaze("own"),
            "one",
            chalk("A", "beaker", 1))
        .level("C", "1in")
        .load();
  }
}
