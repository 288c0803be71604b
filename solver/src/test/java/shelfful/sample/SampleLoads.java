package shelfful.sample;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.Catcher;
import shelfful.ware.FiringKind;

/** Every sample load. All but {@code everything-fits} have more on the list than the kiln holds. */
public final class SampleLoads {
  private static final List<Shelf> SHELVES = SampleShelves.shelves(12, Optional.empty());
  private static final List<Post> POSTS = SampleShelves.posts(60);

  private SampleLoads() {}

  /** In the order of the table in docs/engine.md. */
  public static List<SampleLoad> all() {
    Kiln full = SampleKilns.round(SampleKilns.full());
    return List.of(
        sample("small-50", "a small round kiln", SampleKilns.smallRound(), mixed(11).pieces(50)),
        sample("round-100", "a round top-loader, full shelves", full, mixed(12).pieces(100)),
        sample("square-100", "a square kiln", SampleKilns.square(), mixed(13).pieces(100)),
        sample(
            "halves-100",
            "half shelves side by side, own heights",
            SampleKilns.round(SampleKilns.halves()),
            mixed(14).pieces(100)),
        sample(
            "halves-over-full-100",
            "half shelves over full ones",
            SampleKilns.round(SampleKilns.halvesOverFull()),
            mixed(15).pieces(100)),
        sample(
            "three-plans-150",
            "three column plans to choose from",
            SampleKilns.round(
                SampleKilns.full(), SampleKilns.halves(), SampleKilns.halvesOverFull()),
            mixed(16).pieces(150)),
        scarcePosts(full),
        scarceShelves(full),
        sample("big-and-small-200", "few big, many small", full, bigAndSmall().pieces(200)),
        sample("one-form-150", "mugs only", full, new SampleList(20).of("mug", 1).pieces(150)),
        sample("tall-60", "tall ware", SampleKilns.square(), tall().pieces(60)),
        sample("everything-fits-30", "less than a kiln", full, mixed(22).pieces(30)),
        sample("promised-100", "must-go and due", full, mixed(23).promised(35, 40).pieces(100)),
        weakShelves(),
        sample("front-200", "a front-loader", SampleKilns.front(2, 760), mixed(25).pieces(200)),
        sample("front-500", "a front-loader", SampleKilns.front(4, 900), mixed(26).pieces(500)),
        sample("hall-1000", "a large kiln", SampleKilns.hall(3, 2, 1150), mixed(27).pieces(1000)));
  }

  private static SampleLoad scarcePosts(Kiln kiln) {
    List<Batch> list = mixed(17).pieces(100);
    return sample(
        "scarce-posts-100", "few posts", asked(kiln, SHELVES, SampleShelves.posts(3), list));
  }

  private static SampleLoad scarceShelves(Kiln kiln) {
    List<Shelf> three = SampleShelves.shelves(3, Optional.empty());
    return sample(
        "scarce-shelves-100", "three shelves", asked(kiln, three, POSTS, mixed(18).pieces(100)));
  }

  private static SampleLoad weakShelves() {
    List<Shelf> weak = SampleShelves.shelves(12, Optional.of(6.0));
    Kiln kiln = SampleKilns.front(2, 760);
    return sample(
        "weak-shelves-200", "6 kg a shelf", asked(kiln, weak, POSTS, heavy().pieces(200)));
  }

  private static SampleList mixed(long seed) {
    return new SampleList(seed).mixed();
  }

  private static SampleList bigAndSmall() {
    return new SampleList(19).of("cup", 70).of("bud-vase", 20).of("big-planter", 6).of("plate", 6);
  }

  private static SampleList tall() {
    return new SampleList(21).of("vase", 4).of("bottle", 5).of("big-planter", 1).of("jug", 2);
  }

  private static SampleList heavy() {
    return new SampleList(24).of("mug", 6).of("big-bowl", 2).of("bowl", 4).of("planter", 3);
  }

  private static SampleLoad sample(String name, String shows, Kiln kiln, List<Batch> list) {
    return sample(name, shows, asked(kiln, SHELVES, POSTS, list));
  }

  private static SampleLoad sample(String name, String shows, LoadRequest asked) {
    return new SampleLoad(name, shows, asked);
  }

  private static LoadRequest asked(
      Kiln kiln, List<Shelf> shelves, List<Post> posts, List<Batch> list) {
    // Every studio's forms are a little larger or smaller, by the length of its list.
    double size = 0.96 + 0.02 * (list.size() % 5);
    Catcher catcher =
        new Catcher(Length.ofMillimetres(4), Length.ofMillimetres(8), Mass.ofKilograms(0.1));
    HouseRules rules =
        new HouseRules(Clearances.COMMON_PRACTICE, true, 2, catcher, SampleGlazes.apart(), 7);
    Studio studio =
        new Studio(
            "Alder Yard",
            LengthUnit.MILLIMETRES,
            new SampleForms(size).all(),
            SampleGlazes.all(),
            List.of(kiln),
            shelves,
            posts,
            rules);
    Firing firing =
        new Firing(SampleKilns.ID, FiringKind.GLAZE, SampleGlazes.CONE, 0, Atmosphere.OXIDATION);
    return new LoadRequest(
        studio, list, firing, Optional.empty(), Optional.of(SampleList.DAY), 1, 0);
  }
}
