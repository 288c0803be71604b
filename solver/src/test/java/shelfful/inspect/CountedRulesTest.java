package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.inspect.Limits.rules;
import static shelfful.inspect.Scenes.chalk;
import static shelfful.inspect.Scenes.mm;
import static shelfful.inspect.Scenes.round;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.measure.Cone;
import shelfful.measure.Mass;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;
import shelfful.ware.Zone;

/** Rules that are counted or looked up rather than measured: just kept, just broken. */
class CountedRulesTest {
  private static Studio studio(List<Glaze> glazes, List<Shelf> shelves, List<Post> posts) {
    Studio old = Studios.studio();
    return new Studio(
        old.name(), old.unit(), old.forms(), glazes, old.kilns(), shelves, posts, old.rules());
  }

  private static Studio withRoundShelf(int count, Mass limit) {
    Studio old = Studios.studio();
    List<Shelf> shelves =
        old.shelves().stream()
            .map(
                shelf ->
                    new Shelf(
                        shelf.id(),
                        shelf.name(),
                        shelf.outline(),
                        shelf.thickness(),
                        Optional.of(limit),
                        shelf.hottest(),
                        count))
            .toList();
    return studio(old.glazes(), shelves, old.posts());
  }

  private static Load twoBeakers(Studio studio) {
    return round(studio, List.of("4in"), chalk("A", "beaker", 2))
        .place("F1", "A-001", 0, 0, 0)
        .place("F1", "A-002", 100, 0, 0)
        .load();
  }

  @Test
  void countsShelves() {
    Mass plenty = Mass.ofKilograms(50);
    assertThat(rules(twoBeakers(withRoundShelf(2, plenty)))).isEmpty();
    assertThat(rules(twoBeakers(withRoundShelf(1, plenty))))
        .containsExactly(Rule.SHELVES_OUT_OF_STOCK.id());
  }

  @Test
  void countsPosts() {
    assertThat(rules(twoBeakers(withPosts(3)))).isEmpty();
    assertThat(rules(twoBeakers(withPosts(2))))
        .containsExactly(Rule.POSTS_OUT_OF_STOCK.id(), Rule.POSTS_OUT_OF_STOCK.id());
  }

  private static Studio withPosts(int count) {
    Studio old = Studios.studio();
    List<Post> posts =
        old.posts().stream()
            .map(post -> new Post(post.id(), post.length(), post.across(), count))
            .toList();
    return studio(old.glazes(), old.shelves(), posts);
  }

  @Test
  void weighsWhatStandsOnAShelf() {
    // Two beakers of 280 g.
    assertThat(rules(twoBeakers(withRoundShelf(8, new Mass(560))))).isEmpty();
    assertThat(rules(twoBeakers(withRoundShelf(8, new Mass(559)))))
        .containsExactly(Rule.SHELF_OVERLOADED.id());
  }

  @Test
  void takesConesUpToTheTolerance() {
    assertThat(rules(firedTo("7"))).isEmpty();
    assertThat(rules(firedTo("8"))).containsExactly(Rule.CONE_OUT_OF_TOLERANCE.id());
    assertThat(rules(firedTo("5.5"))).isEmpty();
  }

  @Test
  void firesTheKilnNoHotterThanItsMakerAllows() {
    // The kiln may go to cone 8, the glaze is for cone 6.
    assertThat(rules(firedTo("8"))).doesNotContain(Rule.KILN_TOO_HOT.id());
    assertThat(rules(firedTo("9"))).contains(Rule.KILN_TOO_HOT.id());
  }

  private static Load firedTo(String cone) {
    Firing firing = new Firing("round", FiringKind.GLAZE, new Cone(cone), 1, Atmosphere.OXIDATION);
    return new LoadDraft(Studios.studio(), firing, "full", chalk("A", "beaker", 1))
        .level("F", "1in")
        .place("F1", "A-001", 0, 0, 0)
        .load();
  }

  @Test
  void takesOnlyWareAtTheStageOfTheFiring() {
    for (Stage stage : Stage.values()) {
      Batch old = Batches.dry("D", "beaker", 1);
      Batch batch =
          new Batch(
              "D",
              "beaker",
              Optional.empty(),
              1,
              stage,
              Optional.empty(),
              false,
              1,
              old.due(),
              old.order(),
              old.set(),
              LidPlace.ON);
      Load load =
          new LoadDraft(Studios.studio(), Firings.bisque("round"), "full", batch)
              .level("F", "1in")
              .place("F1", "D-001", 0, 0, 0)
              .load();
      assertThat(rules(load).contains(Rule.PIECE_AT_WRONG_STAGE.id()))
          .isEqualTo(stage != Stage.BONE_DRY);
    }
  }

  @Test
  void wantsACatcherUnderRunnyGlazeAndUnderTooLittleBareFoot() {
    assertThat(rules(bowl("rain", 4, true))).isEmpty();
    assertThat(rules(bowl("rain", 4, false))).containsExactly(Rule.CATCHER_MISSING.id());
    // The wax line of every form runs 6 mm above the foot.
    assertThat(rules(bowl("chalk", 6, false))).isEmpty();
    assertThat(rules(bowl("chalk", 6.05, false))).containsExactly(Rule.CATCHER_MISSING.id());
    assertThat(rules(bowl("chalk", 6.05, true))).isEmpty();
    assertThat(rules(bowl("chalk", 6, true))).containsExactly(Rule.CATCHER_MISSING.id());
  }

  private static Load bowl(String glazeId, double bareFoot, boolean onCatcher) {
    Studio old = Studios.studio();
    List<Glaze> glazes =
        old.glazes().stream()
            .map(
                glaze ->
                    new Glaze(
                        glaze.id(),
                        glaze.name(),
                        glaze.letter(),
                        glaze.colour(),
                        glaze.cone(),
                        glaze.atmosphere(),
                        glaze.gap(),
                        glaze.runny(),
                        mm(bareFoot),
                        glaze.likes(),
                        glaze.forbidden()))
            .toList();
    LoadDraft draft =
        round(
            studio(glazes, old.shelves(), old.posts()),
            List.of("6in"),
            Batches.glazed("B", "bowl", glazeId, 1));
    return (onCatcher
            ? draft.placeOnCatcher("F1", "B-001", 0, 0)
            : draft.place("F1", "B-001", 0, 0, 0))
        .load();
  }

  @Test
  void putsALayerInTheThirdThatItsMiddleLiesIn() {
    // In a chamber of 686 mm a layer from 41.4 to 416 mm has its middle at 228.7: the border is
    // 228.67.
    assertThat(zoneUnder(List.of("8in", "6in"))).isEqualTo(Zone.BOTTOM);
    assertThat(zoneUnder(List.of("8in", "8in"))).isEqualTo(Zone.MIDDLE);
  }

  private static Zone zoneUnder(List<String> posts) {
    Load load =
        round(Studios.studio(), posts, chalk("A", "beaker", 1))
            .place("F1", "A-001", 0, 0, 0)
            .load();
    return ((Inspection.Passed) new Inspector().inspect(load)).load().figures("F1").zone();
  }

  @Test
  void forbidsAZoneAndWishesForAnother() {
    assertThat(rules(moss(Set.of(), Set.of(Zone.BOTTOM))))
        .containsExactly(Rule.ZONE_FORBIDDEN.id());
    assertThat(rules(moss(Set.of(Zone.TOP), Set.of()))).containsExactly(Rule.ZONE_NOT_LIKED.id());
    assertThat(rules(moss(Set.of(Zone.BOTTOM), Set.of(Zone.TOP)))).isEmpty();
  }

  private static Load moss(Set<Zone> likes, Set<Zone> forbidden) {
    Studio old = Studios.studio();
    List<Glaze> glazes =
        old.glazes().stream()
            .map(
                glaze ->
                    new Glaze(
                        glaze.id(),
                        glaze.name(),
                        glaze.letter(),
                        glaze.colour(),
                        glaze.cone(),
                        glaze.atmosphere(),
                        glaze.gap(),
                        glaze.runny(),
                        glaze.bareFoot(),
                        likes,
                        forbidden))
            .toList();
    return round(
            studio(glazes, old.shelves(), old.posts()),
            List.of("4in"),
            Batches.glazed("M", "beaker", "moss", 1))
        .place("F1", "M-001", 0, 0, 0)
        .load();
  }

  @Test
  void keepsAPotAndItsLidTogether() {
    Batch old = chalk("J", "jar", 1);
    Batch beside =
        new Batch(
            "J",
            "jar",
            old.glazeId(),
            1,
            old.stage(),
            old.cone(),
            false,
            1,
            old.due(),
            Optional.of("the inn"),
            old.set(),
            LidPlace.BESIDE);
    LoadDraft draft = round(beside).place("F1", "J-001", 0, 0, 0);
    assertThat(rules(draft.load())).containsExactly(Rule.SET_SPLIT.id(), Rule.ORDER_SPLIT.id());
    assertThat(rules(draft.place("F1", "J-001-lid", 0, 130, 0).load())).isEmpty();
  }

  @Test
  void wantsAReasonForEveryPieceThatWaits() {
    Load load = round(chalk("A", "beaker", 1)).load();
    assertThat(rules(load)).isEmpty();
    List<LeftOut> mute =
        List.of(new LeftOut("A-001", LeftOut.Reason.NO_ROOM, " ", "Fire it next time."));
    Load without = new Load(load.request(), "full", load.layers(), load.posts(), mute);
    assertThat(rules(without)).containsExactly(Rule.PIECE_ACCOUNTED_FOR_ONCE.id());
  }
}
